import { useComputedColorScheme, useMantineColorScheme } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import { LostNote } from '../../frame/lost-note.tsx';
import { BenchClocks } from './bench-clocks.tsx';
import classes from './bench-frame.module.css';
import { BigButton } from './big-button.tsx';
import { useAwake } from './use-awake.ts';

interface BenchFrameProps {
  title: string;
  /** Whose bow and which. */
  about?: string;
  back: { href: string; label: string };
  children: ReactNode;
}

/** The whole screen for the bench: no rail, no tabs, a small way back. It never locks. */
export function BenchFrame({ title, about, back, children }: BenchFrameProps) {
  useAwake();
  const who = useWho();
  const shop = useQuery(orpc.shop.get.queryOptions());
  return (
    <div className={classes.frame}>
      <header className={classes.head}>
        <Link href={back.href} className={classes.back ?? ''}>
          <span aria-hidden="true">‹</span> {back.label}
        </Link>
        <div className={classes.names}>
          <h1 className={classes.title}>{title}</h1>
          {about === undefined ? null : <p className={classes.about}>{about}</p>}
        </div>
        <BenchClocks />
        {shop.data?.isDemo === true ? <span className={classes.who}>Demo shop</span> : null}
        <SchemeButton />
        {who === null ? null : (
          <span className={classes.who}>
            <abbr title={who.name}>{who.initials}</abbr>
          </span>
        )}
      </header>
      <main className={classes.main} id="screen" tabIndex={-1}>
        <LostNote />
        {children}
      </main>
    </div>
  );
}

function SchemeButton() {
  const { setColorScheme } = useMantineColorScheme();
  const scheme = useComputedColorScheme('light', { getInitialValueInEffect: false });
  const other = scheme === 'dark' ? 'light' : 'dark';
  return (
    <BigButton
      label={other === 'dark' ? 'Dark colours' : 'Light colours'}
      onClick={() => setColorScheme(other)}
    >
      {other === 'dark' ? 'Dark' : 'Light'}
    </BigButton>
  );
}
