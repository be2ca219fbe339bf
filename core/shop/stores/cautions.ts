import type { StoresCaution } from '../../../shared/contract/stores.ts';
import { type Hazard, hazardCaution, hazards } from '../../../shared/hazards.ts';
import { decimal } from '../../../shared/measure.ts';
import { mlPerUsFlOz, toCountedUnit } from '../../../shared/stores.ts';
import { hazardsOf } from './consumable-row.ts';
import type { Shelf } from './shelf.ts';

const flOzPerUsGallon = 128;

function isLiquid({ row }: Shelf): boolean {
  return row.unit === 'mL' || row.unit === 'fl oz';
}

/** How much of it stands there, and what of it is not measured as a liquid. */
function flammableAmount(shelves: readonly Shelf[]): string {
  const ml = shelves
    .filter(isLiquid)
    .reduce((sum, { onHand, row }) => sum + toCountedUnit(onHand, row.unit, 'mL'), 0);
  const flOz = ml / mlPerUsFlOz;
  const gallons = decimal(flOz / flOzPerUsGallon, 2);
  const amount = `On the shelves: ${decimal(flOz)} US fl oz (${decimal(ml / 1000, 2)} L, ${gallons} US gal).`;
  const others = shelves.filter((shelf) => !isLiquid(shelf)).length;
  return others === 0 ? amount : `${amount} ${others} counted by weight or piece are not in this.`;
}

/**
 * What the rules say, beside the caution itself. Sources: 29 CFR 1910.106 and 1910.107 and, for
 * two of the sentences, a state's text of them (Washington Administrative Code 296-24-37009 and
 * -37013). That local codes may be stricter is from memory.
 */
const rules: Readonly<Record<Hazard, readonly string[]>> = {
  'flammable-solvent': [
    'Outside a cabinet and in one fire area, 29 CFR 1910.106(e)(2)(ii)(b) sets 25 US gal of Category 1 and 120 US gal of Category 2 to 4 in containers; acetone is Category 2. A local code, or a shop in a home, may have to stay far below.',
    'Near spraying only what one day or shift needs (Washington Administrative Code 296-24-37009(2), a state text of 29 CFR 1910.107).',
    'For cleaning in a spraying area a solvent needs a flash point of 100 F or more, but for nozzles and spray gear (29 CFR 1910.107(g)(5)); acetone has about 0 F.',
  ],
  'self-heating-rags': [
    'Rags into a closed metal can at once, emptied daily or each shift (29 CFR 1910.107(g)(3)). Drying oil heats them by itself; rags with acetone alone give off vapour: keep the two apart.',
  ],
  isocyanate: [
    "No air-purifying respirator is on NIOSH's list for it (HDI, Pocket Guide 0320). An opened can draws moisture: close it at once.",
  ],
  'sanding-dust': [
    'NIOSH: 1 mg/m3 of wood dust, 3 fibres/cm3 and 5 mg/m3 total of fibrous glass, over a shift.',
  ],
};

function cautionOf(hazard: Hazard, shelves: readonly Shelf[]): StoresCaution {
  const amount = hazard === 'flammable-solvent' ? [flammableAmount(shelves)] : [];
  return {
    hazard,
    about: shelves.map(({ row }) => row.name),
    sentences: [hazardCaution[hazard], ...amount, ...rules[hazard]],
  };
}

/** A caution for each hazard that stands on the shelves. */
export function storesCautions(shelves: readonly Shelf[]): StoresCaution[] {
  const holding = shelves.filter(({ onHand }) => onHand > 0);
  return hazards.flatMap((hazard) => {
    const about = holding.filter(({ row }) => hazardsOf(row).includes(hazard));
    return about.length === 0 ? [] : [cautionOf(hazard, about)];
  });
}
