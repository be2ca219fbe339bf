import { useCallback, useEffect, useMemo, useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { type Section, sections } from '../../../shared/gates.ts';
import { z } from '../../../shared/zod.ts';

/** A form that is open on the page, and what it was opened for. */
export interface Opening {
  /** Entry item, consent kind or weighing phase; null for the form's own first choice. */
  opens: string | null;
  /** Rises with every request, so that asking twice scrolls there twice. */
  times: number;
}

/** Places that an address may name: the gate's sections, and what only Today leads to. */
export type NamedPlace = Section | 'hold' | 'tasks';
/** Sections of the order page: those, the job's facts, the photographs and the price. */
export type FormPlace = NamedPlace | 'job' | 'photos' | 'messages' | 'price' | 'weight-plan';

export interface OpenForms {
  opened: Partial<Record<FormPlace, Opening>>;
  open(place: FormPlace, opens?: string | null): void;
  close(place: FormPlace): void;
}

export const anchorOf = (place: FormPlace) => `order-${place}`;

const namedPlace = z.enum([...sections, 'hold', 'tasks']);

/** Reads `?open=section:opens`, as the links of the board and of Today carry it. Null when it names no section. */
export function openingInAddress(
  search: string,
): { section: NamedPlace; opens: string | null } | null {
  const [name, opens = ''] = (new URLSearchParams(search).get('open') ?? '').split(':');
  const section = namedPlace.safeParse(name);
  return section.success ? { section: section.data, opens: opens === '' ? null : opens } : null;
}

/**
 * The form in which a missing item is put right. A bow that is known already can only lack what
 * the job says of it; an address is written into the job.
 */
export function placeOf(section: NamedPlace, bowKnown: boolean): FormPlace {
  if (section === 'address') return 'job';
  return section === 'bow' && bowKnown ? 'job' : section;
}

/** The arrival is written at the unpacking table, which is a page of its own. */
export const unpackingPath = (orderId: string) => `/orders/${orderId}/unpacking`;

export function useOpenForms(order: OrderDetail): OpenForms {
  const [opened, setOpened] = useState<OpenForms['opened']>({});
  const search = useSearch();
  const bowKnown = order.bow !== null;
  const orderId = order.card.id;
  const [, goTo] = useLocation();

  const open = useCallback(
    (place: FormPlace, opens: string | null = null) => {
      if (place === 'arrival') return goTo(unpackingPath(orderId));
      setOpened((now) => ({ ...now, [place]: { opens, times: (now[place]?.times ?? 0) + 1 } }));
      requestAnimationFrame(() =>
        document.getElementById(anchorOf(place))?.scrollIntoView({ block: 'start' }),
      );
    },
    [goTo, orderId],
  );
  const close = useCallback((place: FormPlace) => {
    setOpened(({ [place]: _, ...rest }) => rest);
    requestAnimationFrame(() => document.getElementById(anchorOf(place))?.focus());
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new address opens a form again.
  useEffect(() => {
    const asked = openingInAddress(search);
    if (asked === null) return;
    // Replaced, so that going back does not lead into the link again.
    if (asked.section === 'arrival') goTo(unpackingPath(orderId), { replace: true });
    else open(placeOf(asked.section, bowKnown), asked.opens);
  }, [search]);

  return useMemo(() => ({ opened, open, close }), [opened, open, close]);
}
