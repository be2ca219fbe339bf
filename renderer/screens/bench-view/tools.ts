import { z } from '../../../shared/zod.ts';
import { useKeptEntry } from './kept-entry.ts';

/** What material comes off with, by what is done (common practice). */
export const tools = {
  cut: ['Rasp', 'File', '80 grit', '120 grit'],
  thin: ['Scraper', '120 grit', '180 grit'],
  pass: ['220 grit', '320 grit', '400 grit'],
  sand: ['180 grit', '220 grit', '320 grit'],
} as const;
export type ToolUse = keyof typeof tools;

const kept = z.string().max(120);

/** The tool that was used last for this; empty until somebody has said. */
export function useTool(use: ToolUse): { tool: string; choose: (tool: string) => void } {
  const { entry, change } = useKeptEntry(`tool-${use}`, kept, '');
  // A second press takes it back: nobody has to say.
  return { tool: entry, choose: (tool) => change(tool === entry ? '' : tool) };
}
