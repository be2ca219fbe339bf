import { Table } from '@mantine/core';
import type { ReactNode } from 'react';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { decimal } from '../../../shared/measure.ts';
import { leastStrokeJobs } from '../../../shared/weight-plan.ts';
import { Panel } from '../../parts/panel.tsx';
import type { MethodFigure } from './by-method.ts';
import classes from './owner.module.css';

type Record = ContractOutputs['learned']['forecastRecord'];
interface Figure {
  mean: number;
  sd: number;
}

interface LearnedPanelProps {
  record: Record;
  methods: readonly MethodFigure[];
  /** Only this construction; every one where it is null. */
  construction: Record['allowances'][number]['construction'] | null;
}

const spread = ({ mean, sd }: Figure, unit = '') =>
  `${decimal(mean, 2)} ± ${decimal(sd, 2)}${unit}`;
const jobsText = (jobs: number) => (jobs === 0 ? 'none yet' : String(jobs));

const sectionNames = { measured: 'Measured bare', unknown: 'Section unknown' };

interface Line {
  name: string;
  now: Figure;
  jobs: number;
  usual: Figure;
}

interface ScrollingTableProps {
  label: string;
  caption: string;
  heads: readonly string[];
  widthPx: number;
  /** Its rows. */
  children: ReactNode;
}

/** Wider than a hand-held screen: it scrolls by itself. */
function ScrollingTable({ label, caption, heads, widthPx, children }: ScrollingTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by key
    <section className={classes.scroll} aria-label={label} tabIndex={0}>
      <Table miw={widthPx} captionSide="top">
        <Table.Caption className={classes.caption ?? ''}>
          <span className={classes.captionText}>{caption}</span>
        </Table.Caption>
        <Table.Thead>
          <Table.Tr>
            {heads.map((head) => (
              <Table.Th key={head}>{head}</Table.Th>
            ))}
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>{children}</Table.Tbody>
      </Table>
    </section>
  );
}

function Figures({
  label,
  caption,
  first,
  lines,
  unit,
}: {
  label: string;
  caption: string;
  first: string;
  lines: readonly Line[];
  unit: string;
}) {
  return (
    <ScrollingTable
      label={label}
      caption={caption}
      heads={[first, 'Plans use now', 'Closed jobs', 'Common practice']}
      widthPx={480}
    >
      {lines.map(({ name, now, jobs, usual }) => (
        <Table.Tr key={name}>
          <Table.Td>{name}</Table.Td>
          <Table.Td>{spread(now, unit)}</Table.Td>
          <Table.Td>{jobsText(jobs)}</Table.Td>
          <Table.Td>{spread(usual, unit)}</Table.Td>
        </Table.Tr>
      ))}
    </ScrollingTable>
  );
}

function Methods({ methods }: { methods: readonly MethodFigure[] }) {
  if (methods.length === 0) return <p>No job of this choice tells yet what its bites took.</p>;
  return (
    <ScrollingTable
      label="By what the bites were"
      caption="Drop measured over drop reckoned, by what the bites were; 1 is as reckoned."
      heads={['Bites', 'Measured over reckoned', 'Closed jobs']}
      widthPx={420}
    >
      {methods.map(({ name, mean, sd, jobs }) => (
        <Table.Tr key={name}>
          <Table.Td>{name}</Table.Td>
          <Table.Td>
            {sd === null ? `${decimal(mean, 2)}, spread not known` : spread({ mean, sd })}
          </Table.Td>
          <Table.Td>{jobs}</Table.Td>
        </Table.Tr>
      ))}
    </ScrollingTable>
  );
}

/** Counted strokes feed the sanding allowance once enough jobs tell what a stroke takes. */
function Strokes({ strokes }: { strokes: Record['strokes'] }) {
  if (strokes.length === 0) {
    return (
      <p className={classes.said}>
        Nobody publishes what a stroke takes off. Count the strokes of every grit on both limbs, and
        weigh before and after: {leastStrokeJobs} such jobs teach it, and the bench reckons with it.
      </p>
    );
  }
  return (
    <ScrollingTable
      label="What strokes take"
      caption="What a hundred strokes of coarse grit take off each face, from the closed jobs that counted them; finer grit counts for less."
      heads={['Bows', 'A hundred strokes', 'Closed jobs']}
      widthPx={420}
    >
      {strokes.map(({ construction, jobs, aHundred }) => (
        <Table.Tr key={construction}>
          <Table.Td>{construction}</Table.Td>
          <Table.Td>
            {aHundred === null
              ? `not known before ${leastStrokeJobs} jobs`
              : spread(aHundred, ' thou')}
          </Table.Td>
          <Table.Td>{jobs}</Table.Td>
        </Table.Tr>
      ))}
    </ScrollingTable>
  );
}

/** What the closed jobs taught, beside the common practice it started from. */
export function LearnedPanel({ record, methods, construction }: LearnedPanelProps) {
  const allowances = record.allowances.filter(
    (one) => construction === null || one.construction === construction,
  );
  return (
    <Panel title="What the jobs teach">
      <p className={classes.said}>
        New plans take these figures up by themselves. Common practice counts as five jobs, so one
        odd job moves little. After ± stands one standard deviation.
      </p>
      <Figures
        label="What sanding takes"
        caption="What sanding takes off each face, thousandths of an inch; from every closed job, whatever the period."
        first="Bows and sanding"
        unit=" thou"
        lines={allowances.map(({ construction: of, sanding, figure, usual }) => ({
          name: `${of}, ${sanding}`,
          now: figure,
          jobs: figure.jobs,
          usual,
        }))}
      />
      <Strokes
        strokes={record.strokes.filter(
          (one) => construction === null || one.construction === construction,
        )}
      />
      <Figures
        label="By what is known of the section"
        caption="Drop measured over drop reckoned, by what is known of the section; from every closed job."
        first="Section"
        unit=""
        lines={record.effectiveness.map(({ section, figure, usual }) => ({
          name: sectionNames[section],
          now: figure,
          jobs: figure.jobs,
          usual,
        }))}
      />
      <Methods methods={methods} />
    </Panel>
  );
}
