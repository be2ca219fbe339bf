import { expect, it } from 'vitest';
import { pulledWeights, weightAt } from '../../../renderer/screens/bench-view/pulls.ts';

const at28 = (...forces: number[]) => forces.map((forceLbf) => ({ drawIn: 28, forceLbf }));

it('leaves the first pull of the session out and takes the zero off the others', () => {
  expect(pulledWeights(at28(49.2, 48, 47.6), 0.2)).toEqual([
    { drawIn: 28, forceLbf: 47.6, pulls: 2, rangeLbf: 0.4 },
  ]);
});

it('waits for two pulls that count at the draw of the job', () => {
  expect(weightAt(at28(48), 0, 28)).toBeNull();
  expect(weightAt(at28(48, 47.8), 0, 28)).toBeNull();
  expect(weightAt(at28(48, 47.8, 47.8), 0, 28)?.forceLbf).toBe(47.8);
  expect(weightAt(at28(48, 47.8, 47.8), 0, 27)).toBeNull();
});

it('keeps draws apart', () => {
  const pulls = [...at28(48), { drawIn: 27, forceLbf: 45 }, ...at28(47.8, 47.6)];
  expect(pulledWeights(pulls, 0).map(({ drawIn, pulls: count }) => [drawIn, count])).toEqual([
    [27, 1],
    [28, 2],
  ]);
});
