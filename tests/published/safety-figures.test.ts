import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../core/shop/finish/system-row.ts';
import { cautionsFor } from '../../core/shop/papers/cautions.ts';
import { listStores } from '../../core/shop/stores/list.ts';
import { type Hazard, hazardCaution, hazards, whoDecides } from '../../shared/hazards.ts';
import { twoPartSheet } from '../support/finish-kit.ts';
import { received, stocked } from '../support/stocked-shop.ts';
import { takeIn, testShop } from '../support/test-shop.ts';
import { Flow } from '../support/whole-flow.ts';

/** What the stores say of one hazard that stands there; a US gallon of it. */
async function words(hazard: Hazard): Promise<string> {
  const { owner } = await testShop();
  const id = (await stocked(owner, { hazards: [hazard], unit: 'mL' })).id;
  await received(owner, id, { quantity: 3785.41, unit: 'mL' });
  const { cautions } = await listStores(owner);
  expect(cautions.map((each) => each.hazard)).toEqual([hazard]);
  return cautions.flatMap((each) => each.sentences).join(' ');
}

/** Every number in the words, so that none stands there without having been looked up. */
const numbers = (text: string) => [...new Set(text.match(/\d+(?:[.,]\d+)*/g))].sort();

describe('flammable liquids', () => {
  test('25 US gal of Category 1, 120 of Category 2 to 4 outside a cabinet in one fire area', async () => {
    // 29 CFR 1910.106(e)(2)(ii)(b), as OSHA's letters of 31 March 1983 and 2 December 2003 tell it;
    // acetone is Category 2 by its flash and boiling points.
    const said = await words('flammable-solvent');
    expect(said).toMatch(/29 CFR 1910\.106\(e\)\(2\)\(ii\)\(b\) sets 25 US gal of Category 1/);
    expect(said).toContain('120 US gal of Category 2 to 4 in containers; acetone is Category 2');
    // From memory: local fire codes and mixed occupancy may be stricter.
    expect(said).toMatch(/A local code, or a shop in a home, may have to stay far below/);
  });

  test('a solvent for cleaning in a spraying area flashes at 100 F or more; acetone at about 0 F', async () => {
    // Washington Administrative Code 296-24-37013(5), the text of 29 CFR 1910.107(g)(5). Acetone:
    // 0 F (NTP chemical repository, 1991), -4 F (NFPA 497): both far under 100.
    const said = await words('flammable-solvent');
    expect(said).toContain('flash point of 100 F or more, but for nozzles and spray gear');
    expect(said).toContain('acetone has about 0 F');
  });

  test('near spraying no more than a day or shift needs', async () => {
    // Washington Administrative Code 296-24-37009(2).
    expect(await words('flammable-solvent')).toMatch(
      /only what one day or shift needs \(Washington Administrative Code 296-24-37009\(2\)/,
    );
  });

  test('no other figure stands there, and what is on the shelves is added up in US gallons', async () => {
    const said = await words('flammable-solvent');
    expect(said).toContain('128 US fl oz (3.79 L, 1 US gal)');
    const rules = said.slice(said.indexOf('Outside a cabinet'));
    expect(numbers(rules)).toEqual(
      '0 1 100 120 1910.106 1910.107 2 24 25 29 296 37009 4 5'.split(' '),
    );
  });

  test('printed wrongly: 25 gal for every flammable liquid outside a cabinet', async () => {
    // That is the rule of building sites, 29 CFR 1926.152(b), or of Category 1 alone; and one
    // seller's page has "60 gal Class I or II, 120 gal Class II" for a cabinet.
    const said = await words('flammable-solvent');
    expect(said).not.toMatch(/1926|25 US gal (of flammable|outside)/);
    expect(said).not.toMatch(/60 (US )?gal/);
  });
});

describe('dusts', () => {
  test('NIOSH: wood dust 1 mg/m3; fibrous glass 3 fibres/cm3 and 5 mg/m3 total', async () => {
    // OSHA's chemical sampling pages for wood dust and for fibrous glass, where NIOSH's limits stand.
    const said = await words('sanding-dust');
    expect(said).toContain(
      'NIOSH: 1 mg/m3 of wood dust, 3 fibres/cm3 and 5 mg/m3 total of fibrous glass',
    );
  });

  test('printed wrongly: 5 mg/m3 of wood dust, a limit of 1989 that was vacated', async () => {
    // NIOSH, comments on the 1988 PEL project; still listed as current on several pages.
    expect(await words('sanding-dust')).not.toMatch(/5 mg\/m3 of wood|10 mg\/m3/);
  });
});

test('isocyanates: no air-purifying respirator is on the list of the Pocket Guide', async () => {
  // NIOSH Pocket Guide to Chemical Hazards (2005-151), hexamethylene diisocyanate, no. 0320: from
  // 0.05 ppm up only supplied air and self-contained apparatus are listed.
  const said = await words('isocyanate');
  expect(said).toContain("No air-purifying respirator is on NIOSH's list for it");
  expect(said).toContain('Pocket Guide 0320');
  expect(hazardCaution.isocyanate).toMatch(/supplied air as its sheet says, not a dust mask/);
});

test('rags: a closed metal can at once, emptied daily or each shift; acetone rags kept apart', async () => {
  // Washington Administrative Code 296-24-37013(3), the text of 29 CFR 1910.107(g)(3). That acetone
  // itself does not heat by oxidation is from memory.
  const said = await words('self-heating-rags');
  expect(said).toMatch(/closed metal can at once, emptied daily or each shift/);
  expect(said).toContain('29 CFR 1910.107(g)(3)');
  expect(said).toMatch(/rags with acetone alone give off vapour: keep the two apart/);
});

describe('who has the last word', () => {
  const named = ['data sheet', 'local fire', 'licensed professional'];

  test('the sentence names the data sheet, the local code and a licensed professional', () => {
    for (const each of named) expect(whoDecides).toContain(each);
  });

  test.each(hazards)('it stands after every caution of %s', async (hazard) => {
    expect(cautionsOf({ ...twoPartSheet, hazards: [hazard] })).toEqual([
      hazardCaution[hazard],
      whoDecides,
    ]);
    const { owner } = await testShop();
    expect((await listStores(owner)).whoDecides).toBe(whoDecides);
  });

  test('and on the work order, after all its cautions', async () => {
    const shop = await testShop();
    const order = await new Flow(shop, (await takeIn(shop)).id).order();
    const last = cautionsFor(order).at(-1) ?? '';
    for (const each of named) expect(last).toContain(each);
  });
});
