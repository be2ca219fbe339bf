import { describe, expect, test } from 'vitest';
import { cameAs, construction, facing, takeDown } from '../../shared/bows.ts';
import { entryItems, entryKinds } from '../../shared/entries.ts';
import {
  checklistFor,
  type FinalCheckSubject,
  finalCheckItems,
  finalChecks,
} from '../../shared/final-checklist.ts';
import { services } from '../../shared/stages.ts';

const plain: FinalCheckSubject = {
  construction: 'glass-laminated',
  takeDown: 'one-piece',
  backFacing: 'E-glass',
  bellyFacing: 'E-glass',
  services: ['scuff-recoat'],
  cameAs: 'whole-bow',
  finished: true,
  bitten: false,
};
const itemsOf = (change: Partial<FinalCheckSubject>) =>
  checklistFor({ ...plain, ...change }).map((row) => row.item);

/** Every subset of the services, none included. */
const serviceSets = Array.from({ length: 2 ** services.length }, (_, bits) =>
  services.filter((_service, place) => (bits >> place) % 2 === 1),
);

function* everyBow(): Generator<FinalCheckSubject> {
  for (const made of construction.options)
    for (const joint of takeDown.options)
      for (const backFacing of facing.options)
        for (const bellyFacing of facing.options)
          for (const came of cameAs.options)
            yield {
              ...plain,
              construction: made,
              takeDown: joint,
              backFacing,
              bellyFacing,
              cameAs: came,
            };
}

const glass = ['E-glass', 'clear over veneer', 'carbon'];
const wood = ['wood', 'bamboo'];

describe('whatever the bow', () => {
  test('it is flexed, its nocks are looked at, and every face of it is checked', () => {
    let bows = 0;
    for (const bow of everyBow()) {
      const rows = checklistFor(bow);
      const safety = new Set(rows.filter((row) => row.safety).map((row) => row.item));
      const at = JSON.stringify(bow);
      expect(rows[0]?.item, at).toBe('check-flexed');
      expect(safety.has('check-nocks'), at).toBe(true);
      const faces = [bow.backFacing, bow.bellyFacing];
      if (faces.some((face) => glass.includes(face))) {
        expect(safety.has('check-glass'), at).toBe(true);
      }
      if (bow.construction === 'all-wood' || wood.includes(bow.bellyFacing)) {
        expect(safety.has('check-belly'), at).toBe(true);
      }
      if (bow.construction === 'all-wood' || wood.includes(bow.backFacing)) {
        expect(safety.has('check-back'), at).toBe(true);
      }
      // A face that nobody has identified is never left out.
      expect(safety.has('check-glass') || safety.has('check-belly'), at).toBe(true);
      expect(safety.has('check-glass') || safety.has('check-back'), at).toBe(true);
      expect(safety.has('check-joint'), at).toBe(bow.takeDown === 'bolted three-piece');
      expect(safety.has('check-sleeve'), at).toBe(bow.takeDown === 'sleeve');
      expect(new Set(rows.map((row) => row.item)).size, at).toBe(rows.length);
      bows += 1;
    }
    expect(bows).toBe(3 * 3 * 6 * 6 * 2);
  });

  test('limbs that came alone are flexed on the riser they were weighed on, and the row says so', () => {
    for (const bow of everyBow()) {
      const [flexed] = checklistFor(bow);
      expect(flexed?.hint.includes('riser they were weighed on')).toBe(bow.cameAs === 'limbs-only');
    }
  });
});

test('whatever was done, what was touched is looked at', () => {
  expect(serviceSets).toHaveLength(128);
  for (const done of serviceSets) {
    for (const finished of [true, false]) {
      for (const bitten of [true, false]) {
        const items = itemsOf({ services: done, finished, bitten });
        const at = `${done.join(' ')} ${finished} ${bitten}`;
        const weight = bitten || done.includes('reduce-weight') || done.includes('strip-refinish');
        expect(items, at).toContain('check-flexed');
        expect(items.includes('check-string'), at).toBe(done.includes('new-string'));
        expect(items.includes('check-weighed'), at).toBe(weight);
        expect(items.includes('check-edges'), at).toBe(weight);
        expect(items.includes('check-finish'), at).toBe(finished);
        expect(items.includes('check-markings'), at).toBe(done.includes('re-mark'));
        expect(items.includes('check-grip'), at).toBe(done.includes('grip-rest'));
      }
    }
  }
});

test('a glass bow is not asked for chrysals, a selfbow not for crazed glass', () => {
  expect(itemsOf({})).not.toContain('check-belly');
  expect(itemsOf({})).not.toContain('check-back');
  const selfbow = itemsOf({ construction: 'all-wood', backFacing: 'wood', bellyFacing: 'wood' });
  expect(selfbow).not.toContain('check-glass');
});

test('a bamboo back over a glass belly gets the checks of both', () => {
  const items = itemsOf({ construction: 'other', backFacing: 'bamboo', bellyFacing: 'E-glass' });
  expect(items).toEqual(expect.arrayContaining(['check-glass', 'check-back']));
  expect(items).not.toContain('check-belly');
});

test('every check is an entry of its own that is written nowhere but in the final check', () => {
  expect(finalChecks.map((check) => check.item)).toEqual(finalCheckItems);
  for (const { item, label } of finalChecks) {
    expect(item).toMatch(/^check-[a-z-]+$/);
    expect(entryItems).toContain(item);
    expect(entryKinds[item]).toMatchObject({ label, step: null });
    expect(entryKinds[item].retired).toContain('final check');
  }
});
