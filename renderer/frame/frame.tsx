import { useDisclosure } from '@mantine/hooks';
import type { ReactNode } from 'react';
import { ClockStrip } from './clock-strip/clock-strip.tsx';
import { CommandBox } from './command-box.tsx';
import { DemoBanner } from './demo-banner.tsx';
import classes from './frame.module.css';
import { LostNote } from './lost-note.tsx';
import { PersonMenu } from './person-menu.tsx';
import { Rail } from './rail.tsx';
import { SchemeSwitch } from './scheme-switch.tsx';
import { ShortcutList } from './shortcut-list.tsx';
import { useKeys } from './use-keys.ts';
import { useScanner } from './use-scanner.ts';

/** What stays on the screen while the screens change. */
export function Frame({ children }: { children: ReactNode }) {
  const [listOpen, list] = useDisclosure(false);
  useKeys({ onShortcutList: list.open });
  useScanner();
  return (
    <div className={classes.frame}>
      <a className={classes.skip} href="#screen">
        Skip to the screen
      </a>
      <Rail />
      <div className={classes.head}>
        <DemoBanner />
        <section className={classes.top} aria-label="Top bar">
          <div className={classes.command}>
            <CommandBox />
          </div>
          <div className={classes.spring} />
          <SchemeSwitch />
          <PersonMenu onShortcuts={list.open} />
        </section>
        <ClockStrip />
      </div>
      <main className={classes.main} id="screen" tabIndex={-1}>
        <LostNote />
        {children}
      </main>
      <ShortcutList opened={listOpen} onClose={list.close} />
    </div>
  );
}
