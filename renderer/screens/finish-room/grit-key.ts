import type { Grit } from '../../../shared/grit.ts';

/** A grit as the value of a choice: `P-320`, `CAMI-400`. The number alone says nothing. */
export function gritKey({ scale, grit }: Grit): string {
  return `${scale}-${grit}`;
}

/** Reads {@link gritKey} back; null where none is chosen. */
export function gritFrom(key: string | null): Grit | null {
  const [scale, number] = (key ?? '').split('-');
  const grit = Number(number);
  if ((scale !== 'P' && scale !== 'CAMI') || !Number.isInteger(grit)) return null;
  return { grit, scale };
}
