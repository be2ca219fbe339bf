import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Bow } from '../../../../shared/contract/bows.ts';
import type { LimbSet } from '../../../../shared/contract/limb-sets.ts';
import { decimal, inchGlyph } from '../../../../shared/measure.ts';
import { Facts } from '../../../parts/facts.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { markedText } from '../bow-text.ts';
import { AddLimbSet, EditLimbSet } from './limb-set-form.tsx';

const joined = (parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');

/** What is known of a pair of limbs, as name and value. */
export function limbSetFacts(set: LimbSet): [string, string][] {
  return [
    ['Limbs', set.name],
    [
      'Serials',
      joined([
        set.upperSerial && `upper ${set.upperSerial}`,
        set.lowerSerial && `lower ${set.lowerSerial}`,
      ]),
    ],
    ['Marked', markedText(set)],
    [
      'Marked on',
      joined([
        set.riserName,
        set.riserLengthIn === null ? '' : `${inchGlyph(set.riserLengthIn)}" riser`,
        set.riserPadDeg === null ? '' : `pads ${decimal(set.riserPadDeg)} degrees`,
      ]),
    ],
    ['AMO length', set.amoLengthIn === null ? '' : `${inchGlyph(set.amoLengthIn)}"`],
    ['Notes', set.notes],
  ];
}

/** The pairs of limbs of a take-down bow. */
export function LimbSetsPanel({ bow, limbSets }: { bow: Bow; limbSets: readonly LimbSet[] }) {
  const [isAdding, setAdding] = useState(false);
  const [editing, setEditing] = useState<LimbSet | null>(null);
  if (bow.takeDown === 'one-piece') return null;
  return (
    <Panel
      title="Limb sets"
      actions={
        <Button variant="default" onClick={() => setAdding(true)}>
          Add limbs
        </Button>
      }
    >
      {limbSets.length === 0 ? (
        <p style={{ margin: 0, color: 'var(--quiet)' }}>
          No limbs are kept apart from the bow. Add a pair when limbs come alone, or when there is
          more than one.
        </p>
      ) : null}
      {limbSets.map((set) => (
        <div key={set.id} style={{ marginBottom: 12 }}>
          <Facts facts={limbSetFacts(set)} />
          <Button
            variant="subtle"
            px={0}
            aria-label={`Change "${set.name}"`}
            onClick={() => setEditing(set)}
          >
            Change
          </Button>
        </div>
      ))}
      <AddLimbSet
        opened={isAdding}
        bowId={bow.id}
        onClose={() => setAdding(false)}
        onDone={() => setAdding(false)}
      />
      {editing === null ? null : <EditLimbSet limbSet={editing} onClose={() => setEditing(null)} />}
    </Panel>
  );
}
