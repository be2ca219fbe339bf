import { Table } from '@mantine/core';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { decimal } from '../../../shared/measure.ts';
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

function Figures({
  caption,
  first,
  lines,
  unit,
}: {
  caption: string;
  first: string;
  lines: readonly Line[];
  unit: string;
}) {
  return (
    <Table.ScrollContainer minWidth={480}>
      <Table>
        <Table.Caption ta="left">{caption}</Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>{first}</Table.Th>
            <Table.Th>Plans use now</Table.Th>
            <Table.Th>Closed jobs</Table.Th>
            <Table.Th>Common practice</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {lines.map(({ name, now, jobs, usual }) => (
            <Table.Tr key={name}>
              <Table.Td>{name}</Table.Td>
              <Table.Td>{spread(now, unit)}</Table.Td>
              <Table.Td>{jobsText(jobs)}</Table.Td>
              <Table.Td>{spread(usual, unit)}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Table.ScrollContainer>
  );
}

function Methods({ methods }: { methods: readonly MethodFigure[] }) {
  if (methods.length === 0) return <p>No job of this choice tells yet what its bites took.</p>;
  return (
    <Table.ScrollContainer minWidth={420}>
      <Table>
        <Table.Caption ta="left">
          Drop measured over drop reckoned, by what the bites were; 1 is as reckoned.
        </Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Bites</Table.Th>
            <Table.Th>Measured over reckoned</Table.Th>
            <Table.Th>Jobs</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {methods.map(({ name, mean, sd, jobs }) => (
            <Table.Tr key={name}>
              <Table.Td>{name}</Table.Td>
              <Table.Td>
                {sd === null ? `${decimal(mean, 2)}, spread not known` : spread({ mean, sd })}
              </Table.Td>
              <Table.Td>{jobs}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Table.ScrollContainer>
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
      <Figures
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
