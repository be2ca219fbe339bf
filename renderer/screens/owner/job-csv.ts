import Papa from 'papaparse';
import type { ForecastJob, UntoldJob } from '../../../shared/contract/learned.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';

const columns = [
  'Order',
  'Closed on',
  'Bow',
  'Construction',
  'Method',
  'Draw AMO (in)',
  'Arrival (lbf)',
  'Target (lbf)',
  'Forecast (lbf)',
  'Band low (lbf)',
  'Band high (lbf)',
  'Measured (lbf)',
  'Predicted drop (lbf)',
  'Measured drop (lbf)',
  'Inside the band',
  'Bites',
  'Weighings',
  'Off each face in sanding (thou)',
  'Measured over reckoned drop',
  'Left out because',
];

/** The library's own pattern misses words of several lines. */
const formula = /^[=+\-@\t\r]/;

/** Binary dust has no place in a file that others reckon with. */
const plain = (value: number | null) => (value === null ? '' : Number(value.toFixed(4)));

function told(job: ForecastJob): (string | number)[] {
  return [
    job.orderNumber,
    job.closedOn,
    job.bowName,
    job.construction,
    planMethodLabels[job.method],
    plain(job.drawIn),
    plain(job.arrivalLbf),
    plain(job.targetLbf),
    plain(job.forecastLbf),
    plain(job.bandLbf[0]),
    plain(job.bandLbf[1]),
    plain(job.measuredLbf),
    plain(job.forecastDropLbf),
    plain(job.measuredDropLbf),
    job.isInside ? 'yes' : 'no',
    job.bites,
    job.weighings,
    plain(job.allowanceThou),
    plain(job.effectiveness),
    '',
  ];
}

function untold(job: UntoldJob): (string | number)[] {
  const known = [
    job.orderNumber,
    job.closedOn,
    job.bowName,
    job.construction,
    planMethodLabels[job.method],
  ];
  const empty = Array.from({ length: columns.length - known.length - 1 }, () => '');
  return [...known, ...empty, job.why];
}

/**
 * The table as comma-separated values (RFC 4180): numbers plain, words that a spreadsheet would
 * take for a formula disarmed.
 */
export function jobCsv(jobs: readonly ForecastJob[], left: readonly UntoldJob[]): string {
  const data = [...jobs.map(told), ...left.map(untold)];
  return Papa.unparse({ fields: columns, data }, { escapeFormulae: formula, newline: '\r\n' });
}
