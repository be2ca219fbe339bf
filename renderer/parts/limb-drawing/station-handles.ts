import { placeOf, sheet } from './limb-geometry.ts';

export interface StationHandle {
  fromFadeIn: number;
  /** As a rule reads it. */
  text: string;
  /** For a screen reader: place and sizes. */
  label: string;
  isChosen: boolean;
}

/** Narrowest that a drawing is shown, px; a narrower screen scrolls it. */
export const narrowestPx = 640;
const leastPx = 44;
const digitPx = 9;
const paddingPx = 8;

/** Width of a button that holds its text and a gloved finger, px. */
export const handlePx = ({ text }: StationHandle): number =>
  Math.max(leastPx, text.length * digitPx + paddingPx);

/** Whether each has room for its button beside its neighbours', on the narrowest drawing. */
export function haveRoom(handles: readonly StationHandle[], lengthIn: number): boolean {
  const px = ({ fromFadeIn }: StationHandle) =>
    (narrowestPx * placeOf(fromFadeIn, lengthIn)) / sheet.width;
  return handles.every((handle, i) => {
    const next = handles[i + 1];
    return next === undefined || px(next) - px(handle) >= (handlePx(handle) + handlePx(next)) / 2;
  });
}
