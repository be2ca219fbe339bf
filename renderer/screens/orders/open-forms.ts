import { useCallback, useEffect, useMemo, useState } from 'react';
import { useSearch } from 'wouter';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { type Section, section as sectionSchema } from '../../../shared/gates.ts';

/** A form that is open on the page, and what it was opened for. */
export interface Opening {
  /** Entry item, consent kind or weighing phase; null for the form's own first choice. */
  opens: string | null;
  /** Rises with every request, so that asking twice scrolls there twice. */
  times: number;
}

/** Places of the order page that hold one form: the gate's sections, the job's facts and the hold. */
export type FormPlace = Section | 'job' | 'hold';

export interface OpenForms {
  opened: Partial<Record<FormPlace, Opening>>;
  open(place: FormPlace, opens?: string | null): void;
  close(place: FormPlace): void;
}

export const anchorOf = (place: FormPlace) => `order-${place}`;

/** Reads `?open=section:opens`, as the board's links carry it. Null when it names no section. */
export function openingInAddress(
  search: string,
): { section: Section; opens: string | null } | null {
  const [name, opens = ''] = (new URLSearchParams(search).get('open') ?? '').split(':');
  const section = sectionSchema.safeParse(name);
  return section.success ? { section: section.data, opens: opens === '' ? null : opens } : null;
}

/**
 * The form in which a missing item is put right. A bow that is known already can only lack what
 * the job says of it; an address is written into the job.
 */
export function placeOf(section: Section, bowKnown: boolean): FormPlace {
  if (section === 'address') return 'job';
  return section === 'bow' && bowKnown ? 'job' : section;
}

export function useOpenForms(order: OrderDetail): OpenForms {
  const [opened, setOpened] = useState<OpenForms['opened']>({});
  const search = useSearch();
  const bowKnown = order.bow !== null;

  const open = useCallback((place: FormPlace, opens: string | null = null) => {
    setOpened((now) => ({ ...now, [place]: { opens, times: (now[place]?.times ?? 0) + 1 } }));
    requestAnimationFrame(() =>
      document.getElementById(anchorOf(place))?.scrollIntoView({ block: 'start' }),
    );
  }, []);
  const close = useCallback((place: FormPlace) => {
    setOpened(({ [place]: _, ...rest }) => rest);
    requestAnimationFrame(() => document.getElementById(anchorOf(place))?.focus());
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new address opens a form again.
  useEffect(() => {
    const asked = openingInAddress(search);
    if (asked !== null) open(placeOf(asked.section, bowKnown), asked.opens);
  }, [search]);

  return useMemo(() => ({ opened, open, close }), [opened, open, close]);
}
