import { expect, type Page } from './page.ts';

/** Fields of a form by their labels: a text is filled in, a choice is chosen from its list. */
export interface Typed {
  fill?: Record<string, string>;
  choose?: Record<string, string>;
}

/** Acts on the price of an order: its lines and what was paid. */
export class PriceDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get section() {
    return this.page.getByRole('region', { name: 'Price' });
  }

  get lines() {
    return this.section.getByRole('table', { name: 'Lines of the price' });
  }

  /** Opens the form behind a button and types; what to press then is left to the test. */
  async open(button: string, title: string, { fill = {}, choose = {} }: Typed) {
    await this.section.getByRole('button', { name: button, exact: true }).click();
    const form = this.page.getByRole('form', { name: title });
    for (const [label, option] of Object.entries(choose)) {
      await form.getByRole('combobox', { name: label, exact: true }).click();
      await this.page.getByRole('option', { name: option, exact: true }).click();
    }
    for (const [label, value] of Object.entries(fill)) await form.getByLabel(label).fill(value);
    return form;
  }

  /** Opens what may be done with a line. */
  async menu(what: string): Promise<void> {
    await this.lines.getByRole('button', { name: `Edit ${what}` }).click();
  }

  async edit(what: string, step: string): Promise<void> {
    await this.menu(what);
    await this.page.getByRole('menuitem', { name: step }).click();
  }

  /** Adds a line by a button that opens the form of that title, and sees it among the others. */
  async add(button: string, title: string, fill: Record<string, string>): Promise<void> {
    const rows = this.lines.getByRole('row');
    const before = await rows.count();
    const form = await this.open(button, title, { fill });
    await form.getByRole('button', { name: 'Add the line' }).click();
    await expect(form).toBeHidden();
    await expect(rows).toHaveCount(before + 1);
  }

  /** Records the amount proposed as paid in the given way. */
  async pay(method: string, proposed: string, reference = ''): Promise<void> {
    const form = await this.open('Record a payment', 'Record a payment', {
      choose: { How: method },
      fill: { 'Reference, e.g. check number': reference },
    });
    await expect(form.getByLabel('Amount, dollars')).toHaveValue(proposed);
    await form.getByRole('button', { name: 'Record it' }).click();
    await expect(form).toBeHidden();
  }
}
