import { decimal } from '../../../shared/measure.ts';
import type { BowRow, LimbSetRow } from '../../storage/tables.ts';
import type { RecordedFacts } from './stored.ts';

const unknown = 'not known';
const inches = (value: number | null) => (value === null ? unknown : `${decimal(value, 4)} in`);
const degrees = (value: number | null) => (value === null ? unknown : `${decimal(value, 2)}°`);
const words = (value: string) => (value.trim() === '' ? unknown : value.trim());

function facesOf(bow: BowRow): RecordedFacts {
  return {
    'Facing of the back': bow.back_facing,
    'Facing of the belly': bow.belly_facing,
    'Glass of the back when made': inches(bow.back_glass_made_in),
    'Glass of the back now': inches(bow.back_glass_now_in),
    'Glass of the belly when made': inches(bow.belly_glass_made_in),
    'Glass of the belly now': inches(bow.belly_glass_now_in),
  };
}

function shapeOf(bow: BowRow): RecordedFacts {
  return {
    Profile: bow.profile,
    'Recurve depth': inches(bow.recurve_depth_in),
    'Throat to fade line': inches(bow.throat_to_fade_in),
    'Pad angle': degrees(bow.limb_pad_deg),
    'Upper fade': inches(bow.upper_fade_in),
    'Upper limb length': inches(bow.upper_limb_in),
    'Lower fade': inches(bow.lower_fade_in),
    'Lower limb length': inches(bow.lower_limb_in),
    'Edge radius': inches(bow.edge_radius_in),
  };
}

function ofLimbSet(set: LimbSetRow | null): RecordedFacts {
  if (set === null) return {};
  return {
    'Riser of the limbs': words(set.riser_name),
    'Length of that riser': inches(set.riser_length_in),
    'Pad angle of that riser': degrees(set.riser_pad_deg),
  };
}

/** Everything on record that a plan is made from, in words by its name: what changes outdates it. */
export function recordedFactsOf(bow: BowRow, limbSet: LimbSetRow | null): RecordedFacts {
  return {
    Kind: bow.kind,
    Construction: bow.construction,
    'Core wood': words(bow.core_wood),
    'Maximum safe draw': inches(bow.max_safe_draw_in),
    ...facesOf(bow),
    ...shapeOf(bow),
    ...ofLimbSet(limbSet),
  };
}

/** What is recorded otherwise by now, from what to what. */
export function changedFacts(then: RecordedFacts, now: RecordedFacts): string[] {
  return [...new Set([...Object.keys(then), ...Object.keys(now)])].flatMap((name) => {
    const [was, is] = [then[name] ?? unknown, now[name] ?? unknown];
    return was === is ? [] : [`${name} changed from ${was} to ${is}.`];
  });
}
