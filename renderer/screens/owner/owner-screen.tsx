import { Button, Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { construction } from '../../../shared/bows.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { decimal } from '../../../shared/measure.ts';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import { today } from '../../parts/days.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { byMethod, workPerJob } from './by-method.ts';
import { DropChart } from './drop-chart.tsx';
import { chosenJobs, type JobFilter, periodLabels, periods } from './filter.ts';
import { JobTable } from './job-table.tsx';
import { LearnedPanel } from './learned-panel.tsx';
import classes from './owner.module.css';
import { bandSentence, headline, leaningSentence } from './words.ts';

type ForecastRecord = ContractOutputs['learned']['forecastRecord'];

/** How the forecasts of the shop fared, for the owner and the office. */
export function OwnerScreen() {
  const who = useWho();
  return (
    <Page title="Owner">
      {who === null ? (
        <BusyNote />
      ) : who.role === 'owner' || who.role === 'office' ? (
        <Forecasts />
      ) : (
        <EmptyNote title="This page is for the owner and the office">
          Choose one of them at the top to read it.
        </EmptyNote>
      )}
    </Page>
  );
}

function Forecasts() {
  const record = useQuery(orpc.learned.forecastRecord.queryOptions());
  if (record.data !== undefined) return <Known record={record.data} />;
  return record.error === null ? (
    <BusyNote>Reading the closed jobs ...</BusyNote>
  ) : (
    <ErrorNote error={record.error} onAgain={() => void record.refetch()} />
  );
}

function Known({ record }: { record: ForecastRecord }) {
  const [filter, setFilter] = useState<JobFilter>({ construction: 'all', period: 'all' });
  if (record.jobs.length === 0 && record.untold.length === 0) {
    return (
      <EmptyNote title="No closed job with a weight plan yet">
        Accept a plan at an order's weight bench, weigh the bow again after sanding, and send it
        home. From then on its forecast is held against the scale here.
      </EmptyNote>
    );
  }
  const jobs = chosenJobs(record.jobs, filter, today());
  const untold = chosenJobs(record.untold, filter, today());
  const methods = byMethod(jobs);
  const of = filter.construction === 'all' ? null : filter.construction;
  return (
    <div className={classes.stack}>
      <Filters filter={filter} onChange={setFilter} />
      <ForecastPanel record={record} jobs={jobs} untold={untold} />
      <LearnedPanel record={record} methods={methods} construction={of} />
    </div>
  );
}

interface FiltersProps {
  filter: JobFilter;
  onChange: (next: JobFilter) => void;
}

function Filters({ filter, onChange }: FiltersProps) {
  return (
    <div className={classes.filters}>
      <Select
        label="Bows"
        data={[
          { value: 'all', label: 'Every construction' },
          ...construction.options.map((value) => ({ value, label: value })),
        ]}
        value={filter.construction}
        onChange={(value) => {
          const parsed = construction.safeParse(value);
          onChange({ ...filter, construction: parsed.success ? parsed.data : 'all' });
        }}
      />
      <Select
        label="Closed in"
        data={periods.map((value) => ({ value, label: periodLabels[value] }))}
        value={filter.period}
        onChange={(value) =>
          onChange({ ...filter, period: periods.find((one) => one === value) ?? 'all' })
        }
      />
    </div>
  );
}

interface ForecastPanelProps {
  record: ForecastRecord;
  jobs: ForecastRecord['jobs'];
  untold: ForecastRecord['untold'];
}

/** The file is made when it is asked for: its library is not part of the first load. */
async function save({ jobs, untold }: Pick<ForecastPanelProps, 'jobs' | 'untold'>) {
  const { jobCsv } = await import('./job-csv.ts');
  const name = `forecasts-${today()}.csv`;
  saveFile(new File([jobCsv(jobs, untold)], name, { type: 'text/csv' }));
}

function ForecastPanel({ record, jobs, untold }: ForecastPanelProps) {
  if (jobs.length === 0 && untold.length === 0) {
    return (
      <Panel title="Forecast and scale">
        <EmptyNote title="No closed job of this choice">Choose other bows or more time.</EmptyNote>
      </Panel>
    );
  }
  return (
    <Panel
      title="Forecast and scale"
      actions={
        <Button variant="default" onClick={() => void save({ jobs, untold })}>
          Save the table as CSV
        </Button>
      }
    >
      <Said record={record} jobs={jobs} />
      <div className={classes.pair}>
        {jobs.length === 0 ? null : <DropChart jobs={jobs} />}
        <JobTable jobs={jobs} untold={untold} />
      </div>
    </Panel>
  );
}

function Said({ record, jobs }: Pick<ForecastPanelProps, 'record' | 'jobs'>) {
  const work = workPerJob(jobs);
  if (work === null) {
    return <p className={classes.lead}>None of these jobs was weighed after sanding.</p>;
  }
  const per = `A job took ${decimal(work.weighings)} weighings and ${decimal(work.bites)} bites on average.`;
  return (
    <>
      <p className={classes.lead}>{headline(jobs, byMethod(jobs))}</p>
      <p className={classes.said}>
        {[bandSentence(jobs, record.promisedPart), leaningSentence(jobs), per]
          .filter(Boolean)
          .join(' ')}
      </p>
    </>
  );
}
