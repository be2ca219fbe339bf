import type { Chronicle } from './chronicle.ts';

/** What happened to one order. Yields the instant, in milliseconds, at which it goes on. */
export type Story = AsyncGenerator<number, void>;

interface Running {
  story: Story;
  next: number;
}

async function advance(story: Story): Promise<Running | null> {
  const { done, value } = await story.next();
  return done === true ? null : { story, next: value };
}

/** Tells all stories side by side, always the one whose next step comes first. */
export async function tellInOrder(
  chronicle: Chronicle,
  stories: readonly Story[],
  onStep: () => void | Promise<void>,
): Promise<void> {
  let running: Running[] = [];
  for (const story of stories) {
    const begun = await advance(story);
    if (begun !== null) running.push(begun);
  }
  while (running.length > 0) {
    const first = running.reduce((a, b) => (b.next < a.next ? b : a));
    chronicle.goTo(first.next);
    await onStep();
    const gone = await advance(first.story);
    running = running.flatMap((each) => (each === first ? (gone === null ? [] : [gone]) : [each]));
  }
}
