import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import {
  type LetteredLines,
  letterBlock,
  letterSizes,
  refuseTooLong,
} from './inscription-proof-lines.ts';
import type { TextStyle } from './lines.ts';
import { artifact, quiet } from './sheet.ts';

/** Edges of a limb as measured, inches; from the fade line to the tip. */
export interface ProofLimb {
  name: string;
  stations: readonly { fromFadeIn: number; widthIn: number }[];
}

const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const inset = 18;
const air = 14;

/** Stations as far as the paper reaches, the last one cut to it in a straight line. */
function withinReach(limb: ProofLimb, reachIn: number): ProofLimb['stations'] {
  const kept: { fromFadeIn: number; widthIn: number }[] = [];
  for (const station of limb.stations) {
    const before = kept.at(-1);
    if (station.fromFadeIn <= reachIn) kept.push(station);
    else {
      if (before !== undefined && before.fromFadeIn < reachIn) {
        const share = (reachIn - before.fromFadeIn) / (station.fromFadeIn - before.fromFadeIn);
        const widthIn = before.widthIn + share * (station.widthIn - before.widthIn);
        kept.push({ fromFadeIn: reachIn, widthIn });
      }
      break;
    }
  }
  return kept;
}

function edges(flow: Flow, stations: ProofLimb['stations'], middle: number): void {
  const { doc, left } = flow;
  artifact(doc, () => {
    for (const side of [-1, 1]) {
      for (const [index, { fromFadeIn, widthIn }] of stations.entries()) {
        const x = left + fromFadeIn * 72;
        const y = middle + side * widthIn * 36;
        if (index === 0) doc.moveTo(x, y);
        else doc.lineTo(x, y);
      }
      doc.lineWidth(0.5).stroke(quiet);
    }
  });
}

/**
 * The lines at true size, along a limb drawn at true width where it was measured.
 * @throws ShopError UNPRINTABLE where a line is longer than the paper is wide
 */
export function linesOnLimb(flow: Flow, lettered: LetteredLines, limb: ProofLimb | null): void {
  const room = flow.width - 2 * inset;
  refuseTooLong(flow.doc, lettered, room);
  const { height } = letterSizes(lettered);
  const stations = limb === null ? [] : withinReach(limb, flow.width / 72);
  const widest = Math.max(0, ...stations.map(({ widthIn }) => widthIn * 72));
  const tall = Math.max(height, widest) + 2 * air;
  if (tall > flow.pageRoom) {
    linesOverPages(flow, lettered);
    return;
  }
  flow.needs(tall);
  const middle = flow.y + tall / 2;
  if (stations.length > 1) edges(flow, stations, middle);
  letterBlock(flow, lettered, flow.left + inset, middle - height / 2);
  flow.y += tall;
  flow.para(caption(limb, stations, height), smallStyle);
}

function caption(limb: ProofLimb | null, stations: ProofLimb['stations'], height: number): string {
  if (limb === null || stations.length < 2) return 'True size. The limb was not measured.';
  const narrowest = Math.min(...stations.map(({ widthIn }) => widthIn * 72));
  const wide =
    height > narrowest ? ' The lines are taller than the limb is wide over a part of it.' : '';
  return `True size. The thin lines are the edges of the ${limb.name} from its fade line on, as measured.${wide}`;
}

/** More lines than a page holds: without a limb, broken between lines. */
function linesOverPages(flow: Flow, lettered: LetteredLines): void {
  const { capital, step } = letterSizes(lettered);
  flow.y += air;
  for (const line of lettered.lines) {
    flow.needs(step);
    letterBlock(flow, { ...lettered, lines: [line] }, flow.left + inset, flow.y);
    flow.y += step;
  }
  flow.y += capital;
  flow.para('True size.', smallStyle);
}
