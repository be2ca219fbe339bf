import { refuseField, ShopError } from '../../shared/errors.ts';
import type { Grit } from '../../shared/grit.ts';
import { refuseOddAirLimits } from './air.ts';
import { refuseOddCure } from './cure.ts';
import { abrasive } from './grit.ts';
import { densityOf, type MixRecipe, mixParts, recipeParts } from './mix-recipe.ts';
import { refuseOddPotLife } from './pot-life.ts';
import { refuseOddBands } from './recoat-window.ts';
import { refuseUnlessAboveZero, refuseUnlessPercent } from './refuse.ts';
import { type FilmFigures, type FinishSheet, potLifeOf } from './sheet.ts';

/** One thing to put right on a sheet, at the field it belongs to. */
export interface SheetTrouble {
  field: string;
  sentence: string;
}

const day = /^\d{4}-\d{2}-\d{2}$/;

/** Runs one check and keeps what it refuses; anything but a refusal is a fault of the program. */
function troubleOf(prefix: string, check: () => void): SheetTrouble[] {
  try {
    check();
    return [];
  } catch (error) {
    if (!(error instanceof ShopError)) throw error;
    return Object.entries(error.details).map(([field, sentence]) => ({
      field: `${prefix}${field}`,
      sentence,
    }));
  }
}

function refuseNoName({ name, revision, datedOn }: FinishSheet): void {
  if (name.trim() === '') refuseField('name', 'Give the finish a name.');
  if (revision.trim() === '') refuseField('revision', "Enter the revision of the finish's sheet.");
  if (!day.test(datedOn)) refuseField('datedOn', 'Enter the date printed on the sheet.');
}

function refuseOddCoats({ from, to }: FinishSheet['coats']): void {
  if (!Number.isInteger(from) || !Number.isInteger(to) || from < 1 || to < from) {
    refuseField('coats', 'Coats are whole numbers from 1, the least first.');
  }
}

function refuseOddGrit(field: string, grit: Grit | null): void {
  if (grit === null) return;
  const [trouble] = troubleOf('', () => abrasive(grit));
  if (trouble !== undefined) refuseField(field, trouble.sentence);
}

function refuseOddFilm({ solidsPercent, wetMil }: FilmFigures): void {
  refuseUnlessPercent('solidsPercent', solidsPercent, 'Solids by volume');
  refuseUnlessAboveZero('wetMil', wetMil.from, 'The wet film');
  if (!(wetMil.to >= wetMil.from)) refuseField('wetMil', 'Give the thinner wet film first.');
}

function refuseOddMix(kind: 'two-part' | 'one-part', mix: MixRecipe): void {
  const parts = recipeParts(mix);
  if (kind === 'two-part' && parts.hardener === 0) {
    refuseField('hardenerParts', 'A two-part finish needs its parts of hardener.');
  }
  if (kind === 'one-part' && parts.hardener !== 0) {
    refuseField('hardenerParts', 'A one-part finish has no hardener. Enter it as two-part.');
  }
  for (const part of mixParts) {
    if (mix.density[part] !== null) densityOf(mix, part);
  }
}

function ownTroubles(sheet: FinishSheet): SheetTrouble[] {
  switch (sheet.kind) {
    case 'two-part':
      return [
        ...troubleOf('mix.', () => refuseOddMix('two-part', sheet.mix)),
        ...troubleOf('film.', () => refuseOddFilm(sheet.film)),
        ...troubleOf('potLife.', () => refuseOddPotLife(potLifeOf(sheet))),
      ];
    case 'one-part':
      return [
        ...troubleOf('mix.', () => refuseOddMix('one-part', sheet.mix)),
        ...troubleOf('film.', () => refuseOddFilm(sheet.film)),
      ];
    case 'aerosol':
    case 'hand-rubbed-oil':
      return [];
  }
}

/** What to put right on a sheet, the first thing of each of its parts; empty where it can be used. */
export function sheetTroubles(sheet: FinishSheet): SheetTrouble[] {
  return [
    ...troubleOf('', () => refuseNoName(sheet)),
    ...troubleOf('air.', () => refuseOddAirLimits(sheet.air)),
    ...troubleOf('', () => refuseOddCoats(sheet.coats)),
    ...troubleOf('', () => refuseOddBands(sheet.recoat)),
    ...troubleOf('', () => refuseOddCure(sheet.cure)),
    ...Object.entries(sheet.lastGrit).flatMap(([substrate, grit]) =>
      troubleOf('', () => refuseOddGrit(`lastGrit.${substrate}`, grit)),
    ),
    ...troubleOf('', () => refuseOddGrit('scuffGrit', sheet.scuffGrit)),
    ...ownTroubles(sheet),
  ];
}

/** @throws ShopError BAD_INPUT with every trouble of the sheet under its field. */
export function refuseOddSheet(sheet: FinishSheet): void {
  const troubles = sheetTroubles(sheet);
  const [first] = troubles;
  if (first === undefined) return;
  const message =
    troubles.length === 1 ? first.sentence : `Put ${troubles.length} things on the sheet right.`;
  throw new ShopError(
    'BAD_INPUT',
    message,
    Object.fromEntries(troubles.map(({ field, sentence }) => [field, sentence])),
  );
}
