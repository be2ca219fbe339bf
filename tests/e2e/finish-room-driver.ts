import { localTime } from './finish-behind.ts';
import { expect, type Page } from './page.ts';

/** Acts in the finish room as a person would, by the words on the screen. */
export class FinishRoomDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  form(name: string) {
    return this.page.getByRole('form', { name, exact: true });
  }

  panel(name: string) {
    return this.page.getByRole('region', { name, exact: true });
  }

  get clocks() {
    return this.panel('Running clocks');
  }

  /** Says that what the open form is about was done so long ago. */
  async earlier(form: string, ms: number): Promise<void> {
    const open = this.form(form);
    await open.getByText('When', { exact: true }).click();
    await open.getByLabel('Done at, where it was earlier').fill(localTime(Date.now() - ms));
  }

  /** What a person waits for before the button: the answer to what stands in the form. */
  async answered(form: string): Promise<void> {
    const answer = this.form(form).locator('[aria-busy]');
    await expect(answer).toHaveAttribute('aria-busy', 'false');
    await expect(answer).not.toBeEmpty();
  }

  /** Types the room's air into its form, which stays open. */
  async typeAir(air: { airF: number; humidity: number; surfaceF: number }): Promise<void> {
    await this.panel("Today's air").getByRole('button', { name: 'Read the air' }).click();
    const form = this.form('Read the air');
    await form.getByLabel('Air, F').fill(String(air.airF));
    await form.getByLabel('Humidity, percent').fill(String(air.humidity));
    await form.getByLabel('Surface of a bow, F').fill(String(air.surfaceF));
  }

  async recordAir(): Promise<void> {
    const form = this.form('Read the air');
    await this.answered('Read the air');
    await form.getByRole('button', { name: 'Record the air' }).click();
    await expect(form).toBeHidden();
  }

  /** Opens the form for so many mL of ready mix at 70 F. */
  async typeMix(ml: number): Promise<void> {
    await this.panel('Batches').getByRole('button', { name: 'Mix a batch' }).click();
    const form = this.form('Mix a batch');
    await form.getByLabel('So many mL').check();
    await form.getByLabel('Ready mix, mL').fill(String(ml));
    await form.getByLabel('Temperature of the mix, F').fill('70');
  }

  async mix(): Promise<void> {
    const form = this.form('Mix a batch');
    await this.answered('Mix a batch');
    await form.getByRole('button', { name: 'Mix, issue, start the clock' }).click();
    await expect(form).toBeHidden();
    await expect(this.page.getByRole('status').filter({ hasText: 'is mixed' })).toBeVisible();
  }

  /** Opens the session with this cup and ticks bows by their numbers. */
  async typeCoat(batch: RegExp, numbers: readonly string[], agoMs?: number): Promise<void> {
    await this.panel('Coats due').getByRole('button', { name: 'Coat bows' }).click();
    const form = this.form('Coat bows');
    if (agoMs !== undefined) await this.earlier('Coat bows', agoMs);
    await form.getByRole('radio', { name: batch }).check();
    for (const number of numbers) {
      await form.getByRole('checkbox', { name: new RegExp(`^${number} `) }).check();
    }
  }

  async recordCoat(): Promise<void> {
    const form = this.form('Coat bows');
    await this.answered('Coat bows');
    await form.getByRole('button', { name: 'Record the coat', exact: true }).click();
    await expect(form).toBeHidden();
  }
}
