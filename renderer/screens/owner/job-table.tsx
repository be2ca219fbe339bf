import { Table } from '@mantine/core';
import { Link } from 'wouter';
import type { ForecastJob, UntoldJob } from '../../../shared/contract/learned.ts';
import { decimal } from '../../../shared/measure.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';
import { fullDay } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './owner.module.css';

type Row = { kind: 'told'; job: ForecastJob } | { kind: 'untold'; job: UntoldJob };

/** Both kinds by the day they closed, newest first. */
function rowsOf(jobs: readonly ForecastJob[], untold: readonly UntoldJob[]): Row[] {
  const rows: Row[] = [
    ...jobs.map((job) => ({ kind: 'told' as const, job })),
    ...untold.map((job) => ({ kind: 'untold' as const, job })),
  ];
  return rows.toSorted(
    (a, b) =>
      b.job.closedOn.localeCompare(a.job.closedOn) ||
      b.job.orderNumber.localeCompare(a.job.orderNumber),
  );
}

function Head({ job }: { job: ForecastJob | UntoldJob }) {
  return (
    <>
      <Table.Td>
        <Link href={`/orders/${job.orderId}`} className={classes.order ?? ''}>
          {job.orderNumber}
        </Link>
      </Table.Td>
      <Table.Td>{fullDay(job.closedOn)}</Table.Td>
      <Table.Td className={classes.bow}>{job.bowName}</Table.Td>
      <Table.Td>{planMethodLabels[job.method]}</Table.Td>
    </>
  );
}

function Told({ job }: { job: ForecastJob }) {
  const [low, high] = job.bandLbf;
  return (
    <Table.Tr>
      <Head job={job} />
      <Table.Td className={classes.number}>{decimal(job.forecastDropLbf)} lb</Table.Td>
      <Table.Td className={classes.number}>{decimal(job.measuredDropLbf)} lb</Table.Td>
      <Table.Td className={classes.inBand}>
        <Mark kind={job.isInside ? 'done' : 'attention'}>
          {job.isInside ? 'Inside' : 'Outside'}: {decimal(job.measuredLbf)},{' '}
          <span className={classes.whole}>
            band {decimal(low)} to {decimal(high)} lb @ {decimal(job.drawIn, 4)}"
          </span>
        </Mark>
      </Table.Td>
    </Table.Tr>
  );
}

/** Every closed job with a plan, also those left out, with why. */
export function JobTable({
  jobs,
  untold,
}: {
  jobs: readonly ForecastJob[];
  untold: readonly UntoldJob[];
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by key
    <section className={classes.table} aria-label="Closed jobs" tabIndex={0}>
      <Table miw={900}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Order</Table.Th>
            <Table.Th>Closed</Table.Th>
            <Table.Th>Bow</Table.Th>
            <Table.Th>Method</Table.Th>
            <Table.Th className={classes.number}>Predicted drop</Table.Th>
            <Table.Th className={classes.number}>Measured drop</Table.Th>
            <Table.Th>Band</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {rowsOf(jobs, untold).map((row) =>
            row.kind === 'told' ? (
              <Told key={row.job.orderId} job={row.job} />
            ) : (
              <Table.Tr key={row.job.orderId}>
                <Head job={row.job} />
                <Table.Td colSpan={3}>Left out. {row.job.why}</Table.Td>
              </Table.Tr>
            ),
          )}
        </Table.Tbody>
      </Table>
    </section>
  );
}
