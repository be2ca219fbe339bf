import type { DoneItem } from '../../../../shared/contract/undo.ts';

/** What was done, by the line of history to show it beside: the last one that it wrote here. */
export function doneByLine(
  items: readonly DoneItem[],
  lineIds: readonly string[],
): Map<string, DoneItem> {
  const shown = new Set(lineIds);
  const byLine = new Map<string, DoneItem>();
  for (const item of items) {
    const line = item.historyIds.filter((id) => shown.has(id)).at(-1);
    if (line !== undefined) byLine.set(line, item);
  }
  return byLine;
}
