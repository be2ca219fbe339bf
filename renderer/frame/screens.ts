import {
  IconChartDots,
  IconChartLine,
  IconLayoutKanban,
  IconMailOpened,
  IconPackages,
  IconPrinter,
  IconRulerMeasure,
  IconSettings,
  IconSpray,
  IconSun,
  IconUsers,
  type TablerIcon,
} from '@tabler/icons-react';
import type { Role } from '../../shared/people.ts';

export interface ScreenLink {
  href: string;
  label: string;
  /** Under the icon of the narrow rail. */
  short: string;
  /** Second key after `g`. */
  key: string;
  icon: TablerIcon;
  /** Who has any use for it; everybody where it is left out. */
  roles?: readonly Role[];
}

/** Every screen of the rail, top to bottom. */
export const screens: readonly ScreenLink[] = [
  { href: '/today', label: 'Today', short: 'Today', key: 't', icon: IconSun },
  { href: '/board', label: 'Board', short: 'Board', key: 'b', icon: IconLayoutKanban },
  { href: '/intake', label: 'Intake', short: 'Intake', key: 'i', icon: IconMailOpened },
  {
    href: '/customers',
    label: 'Customers & bows',
    short: 'Customers',
    key: 'c',
    icon: IconUsers,
  },
  {
    href: '/weight-bench',
    label: 'Weight bench',
    short: 'Weight',
    key: 'd',
    icon: IconChartLine,
  },
  { href: '/bench', label: 'Bench view', short: 'Bench', key: 'w', icon: IconRulerMeasure },
  { href: '/stores', label: 'Stores', short: 'Stores', key: 'm', icon: IconPackages },
  { href: '/finish-room', label: 'Finish room', short: 'Finish', key: 'f', icon: IconSpray },
  { href: '/papers', label: 'Papers', short: 'Papers', key: 'p', icon: IconPrinter },
  {
    href: '/owner',
    label: 'Owner',
    short: 'Owner',
    key: 'o',
    icon: IconChartDots,
    roles: ['owner', 'office'],
  },
  { href: '/settings', label: 'Settings', short: 'Settings', key: 's', icon: IconSettings },
];

/** Screens that somebody of this role has a use for; all of them while nobody is known. */
export function screensFor(role: Role | null): readonly ScreenLink[] {
  return screens.filter(
    ({ roles }) => role === null || roles === undefined || roles.includes(role),
  );
}

/** Rail entry that a path belongs to: an order is part of the board, a bow of its customers. */
export function screenOf(path: string): string | undefined {
  if (path.startsWith('/orders/')) return '/board';
  if (path.startsWith('/bows/')) return '/customers';
  return screens.find(({ href }) => path === href || path.startsWith(`${href}/`))?.href;
}
