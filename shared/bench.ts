import { z } from './zod.ts';

/** How material came off. `noted`: written down in words only, before removals were records. */
export const removalMethods = ['narrow', 'thin', 'scrape', 'strokes', 'strip', 'noted'] as const;
export const removalMethod = z.enum(removalMethods);
export type RemovalMethod = (typeof removalMethods)[number];
export const removalMethodLabels: Record<RemovalMethod, string> = {
  narrow: 'Narrowed',
  thin: 'Both faces thinned',
  scrape: 'Belly scraped',
  strokes: 'Sanding strokes',
  strip: 'Stripped and sanded',
  noted: 'Bite noted in words',
};

/** Said wherever a bow is about to be drawn on the scale; common practice. */
export const weighingCautions: readonly string[] = [
  'Use a stringer and eye protection; stand clear of the limbs and the line of the string.',
  'Never past its maximum safe draw; never leave a bow on the rig drawn.',
];

/** Where the string runs over a limb, seen from the belly with the tip up. */
export const stringTracks = ['left', 'centre', 'right'] as const;
export const stringTrack = z.enum(stringTracks);
export type StringTrack = (typeof stringTracks)[number];
export const stringTrackLabels: Record<StringTrack, string> = {
  left: 'to the left',
  centre: 'down the middle',
  right: 'to the right',
};

/** What is looked for after every removal; any of them stops the next bite. */
export const glassSigns = ['showThrough', 'strands', 'runOut', 'exposedCore'] as const;
export const glassSign = z.enum(glassSigns);
export type GlassSign = (typeof glassSigns)[number];
export const glassSignLabels: Record<GlassSign, string> = {
  showThrough: 'Show-through',
  strands: 'Lifted strands',
  runOut: 'Run-out',
  exposedCore: 'Exposed core',
};
