import { Table } from '@mantine/core';
import type { GlassLeft, LifeRemoval } from '../../../../shared/contract/bow-life.ts';
import { fullDay } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { EmptyNote } from '../../../parts/notes.tsx';
import classes from './life.module.css';
import {
  faceLine,
  glassLine,
  glassWarning,
  inches,
  removalsText,
  sidesText,
} from './taken-off-words.ts';

interface TakenOffProps {
  lifetime: readonly LifeRemoval[];
  glassLeft: readonly GlassLeft[];
}

/** What this shop took off the bow in its whole life, and what glass that leaves. */
export function TakenOff({ lifetime, glassLeft }: TakenOffProps) {
  if (lifetime.length === 0 && glassLeft.length === 0) {
    return (
      <EmptyNote title="Nothing was taken off here yet">
        Every bite done at the bench is added up here.
      </EmptyNote>
    );
  }
  return (
    <>
      {lifetime.map((removal, i) => (
        <PairOfLimbs key={removal.limbSetName ?? String(i)} removal={removal} />
      ))}
      {glassLeft.length === 0 ? null : <Glass left={glassLeft} />}
    </>
  );
}

function PairOfLimbs({ removal }: { removal: LifeRemoval }) {
  const { limbSetName, widths, faces, noted } = removal;
  return (
    <section aria-label={limbSetName ?? 'Taken off'}>
      <p>
        {limbSetName === null ? '' : `${limbSetName}: `}
        {removalsText(removal.removals)}
      </p>
      {widths.length === 0 ? null : <Widths widths={widths} />}
      {faces.length === 0 ? null : (
        <ul>
          {faces.map((face) => (
            <li key={`${face.limb} ${face.face}`}>{faceLine(face)}</li>
          ))}
        </ul>
      )}
      {noted.length === 0 ? null : (
        <>
          <p>Noted in words only, in none of the figures:</p>
          <ul>
            {noted.map(({ on, words }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: notes never move, and two may read alike
              <li key={i} style={{ overflowWrap: 'anywhere' }}>
                {fullDay(on)}: {words}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Widths({ widths }: { widths: LifeRemoval['widths'] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by key
    <section aria-label="Narrowed" tabIndex={0} style={{ overflowX: 'auto' }}>
      <Table miw={420}>
        <Table.Caption ta="left">Narrowed, inches; stations from the fade outwards.</Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Limb</Table.Th>
            <Table.Th>From the fade</Table.Th>
            <Table.Th>Per side</Table.Th>
            <Table.Th>In total</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {widths.map((width) => (
            <Table.Tr key={`${width.limb} ${width.fromFadeIn}`}>
              <Table.Td>{width.limb}</Table.Td>
              <Table.Td>{inches(width.fromFadeIn, 2)}</Table.Td>
              <Table.Td>{sidesText(width)}</Table.Td>
              <Table.Td>{inches(width.totalIn)}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </section>
  );
}

function Glass({ left }: { left: readonly GlassLeft[] }) {
  const warning = glassWarning(left);
  return (
    <section aria-label="Glass left">
      <p>
        <strong>Glass left</strong>
      </p>
      <ul>
        {left.map((one) => (
          <li key={`${one.limbSetName} ${one.limb} ${one.face}`}>{glassLine(one)}</li>
        ))}
      </ul>
      {warning === '' ? null : <Mark kind="attention">{warning}</Mark>}
      <p className={classes.quiet}>
        Reckoned, not measured. Look at the edge with a loupe before anything more comes off.
      </p>
    </section>
  );
}
