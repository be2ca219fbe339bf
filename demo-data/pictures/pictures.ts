import { between, type Seeded, seedOf } from '../seeded.ts';
import { upperFade } from './fade.ts';
import { chrysals, markings, wornFinish } from './limb-face.ts';
import type { BowLook } from './look.ts';
import { pencil, steelRule } from './materials.ts';
import { bill, box, packingPaper } from './packing.ts';
import { photograph, type Scene } from './photograph.ts';
import { looseLimbs, sideView } from './side-view.ts';
import { onTheWall } from './tillering-wall.ts';
import { tip } from './tip.ts';

type Draw = (look: BowLook, random: Seeded) => Scene;

const across = (look: BowLook) => 1080 / look.length;
const clutter = (random: Seeded) =>
  (random() < 0.7 ? pencil(160, between(random, 660, 740), between(random, -10, 24)) : '') +
  (random() < 0.7 ? steelRule(690, between(random, 660, 720), between(random, -14, 6)) : '');

/** Everything the demo shop photographs. */
const subjects = {
  unstrung: (look, random) => ({
    ground: random() < 0.5 ? 'bench' : 'mat',
    things:
      clutter(random) +
      sideView(look, { scale: across(look), x: 600, y: 400, turn: between(random, -9, 5) }),
  }),
  strung: (look, random) => ({
    ground: 'mat',
    things:
      clutter(random) +
      sideView(
        look,
        { scale: across(look), x: 600, y: 380, turn: between(random, -8, 4) },
        { bend: 1 },
      ),
  }),
  riser: (look, random) => ({
    ground: 'bench',
    things: sideView(look, { scale: 52, x: 610, y: 400, turn: between(random, -7, 7) }, {}),
  }),
  'worn grip': (look, random) => ({
    ground: 'mat',
    things:
      sideView({ ...look, grip: 'bare' }, { scale: 62, x: 600, y: 430, turn: 0 }, {}) +
      wornFinish(random),
  }),
  'upper fade': (look) => ({ ground: 'mat', things: upperFade(look, false) }),
  'lifted glass': (look) => ({ ground: 'mat', things: upperFade(look, true) }),
  tip: (look) => ({ ground: 'bench', things: tip(look, false) }),
  'cracked overlay': (look) => ({ ground: 'bench', things: tip(look, true) }),
  chrysals: (look, random) => ({ ground: 'mat', things: chrysals(look, random) }),
  markings: (look, random) => ({ ground: 'bench', things: markings(look, random) }),
  limbs: (look) => ({
    ground: 'mat',
    things: looseLimbs(look, { scale: 26, x: 600, y: 450, turn: 0 }),
  }),
  box: (_, random) => ({ ground: 'bench', things: box(random, false) }),
  'crushed box': (_, random) => ({ ground: 'bench', things: box(random, true) }),
  'packing paper': (look, random) => ({
    ground: 'bench',
    things:
      sideView(look, { scale: across(look), x: 600, y: 360, turn: -7 }, { string: false }) +
      packingPaper(random),
  }),
  'tillering wall': (look) => ({ ground: 'wall', things: onTheWall(look, 1.55) }),
  bill: (_, random) => ({ ground: 'bench', things: bill(random) }),
} satisfies Record<string, Draw>;

export type Subject = keyof typeof subjects;
export const subjectNames = Object.keys(subjects) as Subject[];

/** A photograph as JPEG, 1000 by 750 pixels; the same for the same subject, bow and name. */
export function takePhotograph(subject: Subject, look: BowLook, name: string): Promise<Buffer> {
  const draw: Draw = subjects[subject];
  return photograph(seedOf(`${subject} ${name}`), (random) => draw(look, random));
}
