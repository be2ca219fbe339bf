import { expect, type Page } from './page.ts';

/** Acts on the finish log of an order page, and follows what the next step asks of it. */
export class FinishLogDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get section() {
    return this.page.getByRole('region', { name: 'Finish', exact: true });
  }

  /** In the open form: the last grit of both limbs, of a shop that keeps no abrasives in its stores. */
  async sandLimbs(grit: number): Promise<void> {
    const form = this.section.getByRole('form', { name: 'Record sanding', exact: true });
    await form.getByRole('checkbox', { name: 'Upper limb, glass' }).check();
    await form.getByRole('checkbox', { name: 'Lower limb, glass' }).check();
    await form.getByRole('combobox', { name: 'Grit', exact: true }).fill(`P${grit}`);
    await this.page.getByRole('option', { name: new RegExp(`^P${grit} `) }).click();
    await form.getByRole('checkbox', { name: 'This was the last grit before finish' }).check();
    await form.getByRole('button', { name: 'Record the sanding' }).click();
    await expect(form).toBeHidden();
  }

  /** In the open form: the one finish the shop has, or the one of this name. */
  async choose(name: string): Promise<void> {
    const form = this.section.getByRole('form', { name: /^Finish of / });
    await expect(form.getByLabel('Finish')).toHaveValue(new RegExp(`^${name}`));
    await form.getByRole('button', { name: 'Choose this finish' }).click();
    await expect(form).toBeHidden();
    await expect(this.section).toContainText(name);
  }

  /** In the open form: good air for any finish. */
  async readAir(): Promise<void> {
    const form = this.section.getByRole('form', { name: 'Read the air', exact: true });
    await form.getByLabel('Air, F').fill('70');
    await form.getByLabel('Humidity, percent').fill('45');
    await form.getByLabel('Surface of a bow, F').fill('68');
    await expect(form.getByRole('img', { name: /dew point/ })).toBeVisible();
    await form.getByRole('button', { name: 'Record the air' }).click();
    await expect(form).toBeHidden();
  }
}
