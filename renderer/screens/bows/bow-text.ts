import type { BowFields } from '../../../shared/contract/bows.ts';
import { facingText, glassText } from '../../../shared/face-text.ts';
import { decimal, inchGlyph } from '../../../shared/measure.ts';
import { weightText } from '../../../shared/weight-text.ts';
import { wordOf } from '../customers/customer-words.ts';
import {
  constructionWords,
  facingWords,
  handWords,
  kindWords,
  listedSpeciesWords,
  lowStretchWords,
  profileWords,
  takeDownWords,
} from './bow-words.ts';

/** The weight as marked on the bow, with the draw it belongs to; empty when none is marked. */
export function markedText(
  bow: Pick<BowFields, 'markedWeightLbf' | 'markedDrawIn' | 'markedDrawReference'>,
): string {
  if (bow.markedWeightLbf === null) return '';
  if (bow.markedDrawIn === null) return `${decimal(bow.markedWeightLbf)}#, draw not marked`;
  return weightText(bow.markedWeightLbf, bow.markedDrawIn, bow.markedDrawReference);
}

/** One line that tells this bow from the others on the rack. */
export function bowTitle(bow: BowFields): string {
  const length = bow.amoLengthIn === null ? '' : ` ${decimal(bow.amoLengthIn, 2)}"`;
  const takeDown = bow.takeDown === 'one-piece' ? '' : ' take-down';
  const name = [bow.maker, bow.model].filter(Boolean).join(' ');
  return [`${wordOf(kindWords, bow.kind)}${length}${takeDown}`, name].filter(Boolean).join(', ');
}

const inches = (value: number | null) => (value === null ? '' : `${inchGlyph(value)}"`);

const exact = (value: number | null) => (value === null ? '' : `${decimal(value, 3)}"`);

function shapeFacts(bow: BowFields): [string, string][] {
  return [
    ['Tip to tip, unstrung', inches(bow.tipToTipIn)],
    ['Profile', bow.profile === 'unknown' ? '' : wordOf(profileWords, bow.profile)],
    ['Recurve depth', inches(bow.recurveDepthIn)],
    ['Throat to fade line', exact(bow.throatToFadeIn)],
    ['Limb pad', bow.limbPadDeg === null ? '' : `${decimal(bow.limbPadDeg)} degrees`],
  ];
}

function limbFacts({ limbs }: BowFields): [string, string][] {
  const said = ({ fadeIn, limbIn }: BowFields['limbs']['upper']) =>
    [
      fadeIn === null ? '' : `fade ${inches(fadeIn)} from the throat`,
      limbIn === null ? '' : `limb ${inches(limbIn)}`,
    ]
      .filter(Boolean)
      .join(', ');
  return [
    ['Upper limb', said(limbs.upper)],
    ['Lower limb', said(limbs.lower)],
  ];
}

function braceText({ braceLowIn: low, braceHighIn: high }: BowFields): string {
  if (low === null && high === null) return '';
  if (low === null) return `up to ${inches(high)}`;
  if (high === null) return `from ${inches(low)}`;
  return low === high ? inches(low) : `${inches(low)} to ${inches(high)}`;
}

/** Everything known of a bow, as name and value. */
export function bowFacts(bow: BowFields): [string, string][] {
  return [
    ['Kind', wordOf(kindWords, bow.kind)],
    ['Built of', wordOf(constructionWords, bow.construction)],
    ['Form', wordOf(takeDownWords, bow.takeDown)],
    ['Hand', wordOf(handWords, bow.hand)],
    ['Maker', bow.maker],
    ['Model', bow.model],
    ['Serial', bow.serial],
    ['AMO length', inches(bow.amoLengthIn)],
    ['Marked', markedText(bow)],
    ['Never draw past', inches(bow.maxSafeDrawIn)],
    ['Limb facing', facingText(bow.faces, (facing) => wordOf(facingWords, facing))],
    ['Glass, back', glassText(bow.faces.back)],
    ['Glass, belly', glassText(bow.faces.belly)],
    ...shapeFacts(bow),
    ...limbFacts(bow),
    ['Core wood', bow.coreWood],
    ['Moisture', bow.moisturePct === null ? '' : `${decimal(bow.moisturePct)} %`],
    ['Edge radius', inches(bow.edgeRadiusIn)],
    ['Low-stretch string', wordOf(lowStretchWords, bow.lowStretchTips)],
    ['Brace height', braceText(bow)],
    ['Listed species', wordOf(listedSpeciesWords, bow.listedSpecies)],
    ['Notes', bow.notes],
  ];
}
