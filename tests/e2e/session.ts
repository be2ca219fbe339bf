import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import type { Browser, BrowserContext, Page } from 'playwright';
import { expect } from 'vitest';
import { keptFolder } from '../support/kept-folder.ts';
import { openBrowser, type Program, startProgram, stopProgram } from './program.ts';
import { tourPicture } from './tour-picture.ts';

const output = fileURLToPath(new URL('../output', import.meta.url));

/** The program, a browser and one tab on it, over a data folder of their own. */
export class Session {
  readonly browser: Browser;
  readonly context: BrowserContext;
  readonly page: Page;
  program: Program;
  readonly #folder: ReturnType<typeof keptFolder>;
  readonly #troubles: string[] = [];

  private constructor(
    folder: ReturnType<typeof keptFolder>,
    program: Program,
    browser: Browser,
    context: BrowserContext,
    page: Page,
  ) {
    this.#folder = folder;
    this.program = program;
    this.browser = browser;
    this.context = context;
    this.page = page;
    page.on('pageerror', (error) => this.#troubles.push(error.message));
  }

  /** @param prepare fills the data folder before the program starts on it. */
  static async open(prepare?: (dataFolder: string) => Promise<void>): Promise<Session> {
    const folder = keptFolder();
    await prepare?.(folder.path);
    const program = await startProgram(folder.path);
    const browser = await openBrowser();
    const context = await browser.newContext({
      viewport: { width: 1280, height: 860 },
      acceptDownloads: true,
      reducedMotion: 'reduce',
    });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    return new Session(folder, program, browser, context, page);
  }

  at(path: string): string {
    return new URL(path, this.program.url).href;
  }

  /** Stopped and started again at the same address, as its data folder remembers it. */
  async restart(signal: NodeJS.Signals): Promise<void> {
    await stopProgram(this.program, signal);
    const { port } = new URL(this.program.url);
    this.program = await startProgram(this.#folder.path, port);
    await this.page.goto(this.program.url);
  }

  /** WCAG 2.2 AA, as far as axe can tell, of the whole screen or of what a selector names. */
  async accessible(where: string, within?: string): Promise<void> {
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    const { page } = this;
    // A page that was looked at before has axe already: reading its source again takes longer than
    // most looks.
    const knowsAxe = await page.evaluate(() => 'axe' in window);
    const axe = new AxeBuilder({ page, ...(knowsAxe ? { axeSource: '/* there */' } : {}) })
      // Only what is broken is told: listing all that is right takes as long as finding it.
      .options({ resultTypes: ['violations'] })
      .withTags(tags)
      // In the page itself: without it axe opens a tab of its own for frames, of which there are none.
      .setLegacyMode(true);
    if (within !== undefined) axe.include(within);
    const { violations } = await axe.analyze();
    const broken = violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 300)}`);
    expect(broken, where).toEqual([]);
  }

  /** Pictures of the tour in the README, made anew with TILLERMARK_TOUR=1. */
  picture(name: string): Promise<void> {
    return tourPicture(this.page, name);
  }

  /** Keeps every screen for the eye, where TILLERMARK_LOOKS names a folder. */
  async look(name: string): Promise<void> {
    const folder = process.env.TILLERMARK_LOOKS;
    if (folder === undefined) return;
    mkdirSync(folder, { recursive: true });
    await this.page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  }

  /** What the screen showed when a test failed, under tests/output. */
  async evidence(name: string): Promise<void> {
    mkdirSync(output, { recursive: true });
    const file = `${output}/${name.replaceAll(/\W+/g, '-').slice(0, 80)}`;
    await this.page.screenshot({ path: `${file}.png` });
    writeFileSync(`${file}.txt`, await this.page.locator('body').ariaSnapshot());
  }

  /** Errors that the page threw and nobody caught. */
  troubles(): readonly string[] {
    return this.#troubles;
  }

  async close(): Promise<void> {
    await this.browser.close();
    await stopProgram(this.program);
    this.#folder.remove();
  }
}
