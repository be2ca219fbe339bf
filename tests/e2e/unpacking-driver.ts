import { expect, type Page } from './page.ts';

/** Acts at the unpacking table, part by part, by the words on the screen. */
export class UnpackingDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  part(title: string) {
    return this.page.getByRole('region', { name: title });
  }

  /** Saves a part and waits until nothing typed in it is left unsaved. */
  async save(title: string, button: string): Promise<void> {
    const part = this.part(title);
    await part.getByRole('button', { name: button }).click();
    await expect(part.getByText('Not saved yet')).toHaveCount(0);
    await expect(part.getByRole('alert')).toHaveCount(0);
  }

  async box(condition: string, packaging = 'tube with caps, padded'): Promise<void> {
    const part = this.part('1 Box and packaging');
    await part.getByLabel('Came by').fill('parcel');
    await part.getByLabel('Packaging', { exact: true }).fill(packaging);
    await part.getByLabel('Packaging is kept').check();
    await part.getByLabel('Condition of the bow as it came out').fill(condition);
    await this.save('1 Box and packaging', 'Save the box');
  }

  /** One tap each; the words on the buttons. */
  async cameAlong(...things: readonly string[]): Promise<void> {
    const part = this.part('2 What came along');
    for (const thing of things) {
      await part.getByRole('button', { name: thing, exact: true }).click();
      await expect(part.getByRole('listitem').getByText(thing, { exact: true })).toBeVisible();
    }
  }

  async nothingCameAlong(): Promise<void> {
    const part = this.part('2 What came along');
    await part.getByRole('button', { name: 'Nothing came along' }).click();
    await expect(part.getByRole('button', { name: 'Something did come along' })).toBeVisible();
  }

  async lookedOver(): Promise<void> {
    await this.part('4 Look it over').getByLabel('All of these were looked for').check();
    await this.save('4 Look it over', 'Save that it was looked over');
  }

  async strung(): Promise<void> {
    const title = '5 String it, or say why not';
    const part = this.part(title);
    await part.getByLabel('Strung', { exact: true }).check();
    await part.getByLabel('Alignment').fill('limbs in line, no twist');
    await part.getByLabel('String track').fill('down the middle of both limbs');
    await part.getByLabel('Brace height, in').fill('7 1/4');
    await part.getByLabel('Tiller, upper minus lower, in').fill('1/8');
    await this.save(title, 'Save the stringing');
  }

  async notStrung(because: string): Promise<void> {
    const title = '5 String it, or say why not';
    const part = this.part(title);
    await part.getByLabel('Not strung, because ...').check();
    await part.getByRole('textbox', { name: 'Not strung because' }).fill(because);
    await this.save(title, 'Save the stringing');
  }

  async complete(): Promise<void> {
    const part = this.part('7 Arrival check complete');
    await part.getByRole('button', { name: 'The arrival check is complete' }).click();
    await expect(part.getByText(/^Complete since/)).toBeVisible();
  }

  async backToTheOrder(): Promise<void> {
    await this.page.getByRole('link', { name: 'Go on with the order' }).click();
    await expect(this.page.getByRole('region', { name: 'Next step' })).toBeVisible();
  }
}
