import { readFileSync } from 'node:fs';
import { expect, type Page } from './page.ts';

/** A file the browser saved. */
export interface Saved {
  name: string;
  bytes: Uint8Array;
}

/** Does what the answer says and no more than the person typed. */
export interface AnswerWords {
  answer: 'Granted' | 'Declined' | 'Withdrawn';
  words?: string;
  cost?: string;
}

/** Acts on the sections of the order page that are about what is agreed, written and paid. */
export class AgreementDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  section(name: string | RegExp) {
    return this.page.getByRole('region', { name });
  }

  /** Opens a folded section; one that stands open, or has nothing inside yet, stays as it is. */
  async unfold(name: string | RegExp): Promise<void> {
    await expect(this.section(name)).toBeVisible();
    const toggle = this.section(name).getByRole('heading', { level: 2 }).getByRole('button');
    if ((await toggle.count()) === 0) return;
    if ((await toggle.getAttribute('aria-expanded')) === 'false') await toggle.click();
  }

  /** Chooses in a list that opens over the page. */
  async choose(label: string, option: string): Promise<void> {
    await this.page.getByRole('dialog').getByRole('combobox', { name: label }).click();
    await this.page.getByRole('option', { name: option, exact: true }).click();
  }

  /** Asks as the program proposes; answers the text the customer reads. */
  async ask(kind: string): Promise<string> {
    await this.section('Consents').getByRole('button', { name: 'Ask the customer' }).click();
    const dialog = this.page.getByRole('dialog', { name: 'Ask the customer' });
    await this.choose('What is asked', kind);
    const text = dialog.getByLabel(/^Text the customer reads/);
    await expect(text).not.toHaveValue('');
    await dialog.getByLabel('How it is asked').fill('e-mail nora@hale.example');
    const asked = await text.inputValue();
    await dialog.getByRole('button', { name: 'Record that this was asked' }).click();
    await expect(dialog).toBeHidden();
    return asked;
  }

  /** Opens the answer to the newest question of a kind and ticks what was said. */
  async openAnswer(kind: string, said: AnswerWords) {
    const action = said.answer === 'Withdrawn' ? 'Record a withdrawal' : 'Record the answer';
    await this.section('Consents')
      .getByRole('button', { name: `${action}: ${kind}` })
      .click();
    const dialog = this.page.getByRole('dialog', { name: 'Record the answer' });
    await dialog.getByLabel(new RegExp(`^${said.answer}`)).check();
    if (said.words !== undefined) {
      await dialog.getByRole('textbox', { name: /^Words/ }).fill(said.words);
    }
    if (said.cost !== undefined) await dialog.getByLabel(/^Change of price/).fill(said.cost);
    return dialog;
  }

  async finishAnswer(): Promise<void> {
    const dialog = this.page.getByRole('dialog', { name: 'Record the answer' });
    await dialog.getByRole('button', { name: 'Record the answer' }).click();
    await expect(dialog).toBeHidden();
  }

  /** Records that the lettering is on the bow or dry, from where it is written. */
  async letter(step: 'applied' | 'dry', note: string): Promise<void> {
    await this.section('To be written on the bow')
      .getByRole('button', { name: `Record lettering ${step}` })
      .click();
    const form = this.page.getByRole('form', { name: /^Record:/ });
    await form.getByLabel('Note').fill(note);
    await form.getByRole('button', { name: 'Record', exact: true }).click();
    await expect(form).toBeHidden();
  }

  /** Draws two lines into the box, by mouse. */
  async sign(): Promise<void> {
    const box = this.page.getByRole('img', { name: /^Box to sign in/ });
    await box.scrollIntoViewIfNeeded();
    const at = await box.boundingBox();
    if (at === null) throw new Error('there is no box to sign in');
    for (const [from, to] of [
      [0.2, 0.5],
      [0.55, 0.8],
    ] as const) {
      await this.page.mouse.move(at.x + at.width * from, at.y + at.height * 0.3);
      await this.page.mouse.down();
      await this.page.mouse.move(at.x + at.width * to, at.y + at.height * 0.7, { steps: 6 });
      await this.page.mouse.up();
    }
  }

  async #choosePaper(group: string, kind: string): Promise<void> {
    const menu = this.section('Papers').getByRole('button', { name: group });
    const item = this.page.getByRole('menuitem', { name: kind, exact: true });
    // A dialog that closed just now takes the focus back, which closes a menu opened that fast.
    await expect(async () => {
      await menu.click();
      await expect(item).toBeVisible({ timeout: 1_000 });
    }).toPass();
    await item.click();
  }

  /** Opens a paper of the order from its group. */
  async openPaper(group: string, kind: string): Promise<void> {
    await this.#choosePaper(group, kind);
    await this.previewed();
  }

  /** Opens a paper that may not be made yet; its dialog says why. */
  async openPaperRefused(group: string, kind: string, why: string | RegExp): Promise<void> {
    await this.#choosePaper(group, kind);
    const dialog = this.page.getByRole('dialog');
    await expect(dialog.getByRole('alert')).toContainText(why);
    await expect(dialog.getByRole('button', { name: 'Save', exact: true })).toBeDisabled();
    await this.closeDialog();
  }

  async previewed(): Promise<void> {
    // The first paper starts the worker that draws it.
    await expect(this.page.getByRole('dialog').locator('canvas').first()).toBeVisible({
      timeout: 30_000,
    });
  }

  /** Saves what the press makes the browser download. */
  async saving(press: () => Promise<void>): Promise<Saved> {
    const downloading = this.page.waitForEvent('download');
    await press();
    const download = await downloading;
    return {
      name: download.suggestedFilename(),
      bytes: new Uint8Array(readFileSync(await download.path())),
    };
  }

  savePaper(): Promise<Saved> {
    return this.saving(() =>
      this.page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }).click(),
    );
  }

  async printPaper(): Promise<void> {
    const dialog = this.page.getByRole('dialog');
    const opening = this.page.context().waitForEvent('page');
    await dialog.getByRole('button', { name: 'Print', exact: true }).click();
    const tab = await opening;
    // Closed any sooner, the paper would find no tab to go to.
    await expect(dialog).toContainText('Opened in the viewer');
    await tab.close();
  }

  async closeDialog(): Promise<void> {
    await this.page.keyboard.press('Escape');
    await expect(this.page.getByRole('dialog')).toBeHidden();
  }
}
