import { type Limb, limbs } from '../../../shared/bows.ts';
import type { Station } from '../../../shared/contract/geometry.ts';
import { ShopError } from '../../../shared/errors.ts';
import { inchFraction } from '../../../shared/measure.ts';

const fewest = 3;
const named = { upper: 'Upper limb', lower: 'Lower limb' } as const;
const at = (station: Station) => `${inchFraction(station.fromFadeIn)}" from the fade`;

function refuse(limb: Limb, station: Station, index: number, what: string, todo: string): never {
  throw new ShopError('BAD_INPUT', `${named[limb]}, station ${at(station)}: ${what}`, {
    [`stations.${index}`]: todo,
  });
}

function checkOrder(limb: Limb, stations: readonly Station[], all: readonly Station[]): void {
  for (const [place, station] of stations.entries()) {
    const before = stations[place - 1];
    if (before === undefined || station.fromFadeIn > before.fromFadeIn) continue;
    const index = all.indexOf(station);
    if (station.fromFadeIn === before.fromFadeIn) {
      refuse(limb, station, index, 'it is there twice.', 'Take one of the two out.');
    }
    const todo = 'Order the stations from the fade to the tip.';
    refuse(limb, station, index, `it comes after the one ${at(before)}.`, todo);
  }
}

function checkSizes(
  limb: Limb,
  stations: readonly Station[],
  all: readonly Station[],
  limbIn: number | null,
): void {
  for (const station of stations) {
    const { fromFadeIn, thicknessIn, widthIn } = station;
    const index = all.indexOf(station);
    if (limbIn !== null && fromFadeIn > limbIn) {
      const what = `the limb is ${inchFraction(limbIn)}" long.`;
      refuse(limb, station, index, what, 'Check the distance, or the length of the limb.');
    }
    // Old all-wood limbs run as deep as they are wide; nothing bends that is much deeper (common practice).
    if (thicknessIn !== null && thicknessIn > 1.5 * widthIn) {
      const what = 'it is much thicker than it is wide.';
      refuse(limb, station, index, what, 'Check whether width and thickness changed places.');
    }
  }
}

/**
 * Stations run from fade to tip, each once, at least three on every limb that was measured, and
 * none past the end of its limb.
 * @param limbIn length of each limb from its fade line, inches, or null where nobody measured it.
 * @throws ShopError BAD_INPUT naming limb and station.
 */
export function checkStations(
  all: readonly Station[],
  limbIn: Readonly<Record<Limb, number | null>>,
): void {
  if (all.length === 0) {
    throw new ShopError('BAD_INPUT', `Measure at least ${fewest} stations of a limb.`, {
      stations: 'Nothing is measured yet.',
    });
  }
  for (const limb of limbs) {
    const stations = all.filter((station) => station.limb === limb);
    if (stations.length > 0 && stations.length < fewest) {
      throw new ShopError(
        'BAD_INPUT',
        `${named[limb]}: ${stations.length} of at least ${fewest} stations measured.`,
        { stations: `Measure at least ${fewest} stations of the ${limb} limb, or none.` },
      );
    }
    checkOrder(limb, stations, all);
    checkSizes(limb, stations, all, limbIn[limb]);
  }
}
