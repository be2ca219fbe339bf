import { expect, type Page } from './page.ts';

const figures: readonly (readonly [string, string])[] = [
  ['Name', 'Hard clear'],
  ['Revision of the data sheet', 'C'],
  ['Date printed on the sheet', '2026-03-01'],
  ['Parts of resin', '4'],
  ['Thinner, percent', '10'],
  ['Density of the resin, g/mL', '1.02'],
  ['Density of the hardener, g/mL', '1.11'],
  ['Density of the thinner, g/mL', '0.87'],
  ['Solids by volume, percent', '42'],
  ['Wet film of one coat, mil: from', '2'],
  ['Wet film of one coat, mil: to', '4'],
  ['Pot life, minutes', '120'],
  ['At the temperature of, F', '70'],
  ['Let it stand first, minutes', '15'],
  ['Air, F: from', '60'],
  ['Air, F: to', '90'],
  ['Humidity, percent: from', '20'],
  ['Humidity, percent: to', '70'],
  ['Coats: from', '2'],
  ['Coats: to', '4'],
  ['Surface from, F', '60'],
  ['Surface to, F', '90'],
  ['From, hours', '4'],
  ['To, hours', '24'],
  ['Dry to handle, hours', '12'],
  ['Safe to string and flex, hours', '72'],
  ['Safe to wrap, hours', '96'],
  ['Fully cured, hours', '168'],
];

/** A finish that is rubbed on as it comes: no mix, no film, no pot life. */
const oilFigures: readonly (readonly [string, string])[] = [
  ['Name', 'Rubbing oil'],
  ['Revision of the data sheet', '2'],
  ['Date printed on the sheet', '2026-02-01'],
  ['Air, F: from', '55'],
  ['Air, F: to', '90'],
  ['Humidity, percent: from', '10'],
  ['Humidity, percent: to', '75'],
  ['Coats: from', '3'],
  ['Coats: to', '4'],
  ['Surface from, F', '55'],
  ['Surface to, F', '90'],
  ['From, hours', '12'],
  ['Dry to handle, hours', '24'],
  ['Safe to string and flex, hours', '72'],
  ['Safe to wrap, hours', '96'],
  ['Fully cured, hours', '336'],
];

/** The form of a data sheet under Settings. */
export class FinishSheetDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get form() {
    return this.page.getByRole('dialog', { name: 'Add a finish, from its data sheet' });
  }

  async fill(label: string, value: string): Promise<void> {
    await this.form.getByLabel(label, { exact: false }).first().fill(value);
  }

  /** Everything but the parts of hardener, which somebody forgot. */
  async copyAlmostAll(): Promise<void> {
    for (const [label, value] of figures) await this.fill(label, value);
    await this.form.getByRole('button', { name: 'Add a later time to line 1' }).click();
    await this.form.getByLabel('Isocyanates').check();
    for (const [label, name] of [
      ['Resin', 'Hard clear, resin'],
      ['Hardener', 'Hard clear, hardener'],
      ['Thinner', 'Slow thinner'],
    ] as const) {
      await this.form.getByRole('combobox', { name: label, exact: true }).click();
      await this.page.getByRole('option', { name: new RegExp(`^${name}`) }).click();
    }
  }

  /** All of an oil's sheet, for a shop that keeps none of it in its stores. */
  async copyOil(): Promise<void> {
    await this.form.getByRole('combobox', { name: 'Kind', exact: true }).click();
    await this.page.getByRole('option', { name: 'Hand-rubbed oil' }).click();
    for (const [label, value] of oilFigures) await this.fill(label, value);
    await this.form.getByLabel('Rags that heat themselves').check();
  }

  async add(): Promise<void> {
    await this.form.getByRole('button', { name: 'Add the finish' }).click();
  }

  async isAdded(): Promise<void> {
    await expect(this.form).toBeHidden();
  }
}
