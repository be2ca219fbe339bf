import { useEffect, useState } from 'react';
import { useConnection } from '../../api/connection.ts';
import { BusyNote } from '../../parts/notes.tsx';
import { StartPage } from './start-page.tsx';

const patienceMs = 15_000;

/** True once the connection has been away for so long that waiting alone will not help. */
export function useLongLost(): boolean {
  const { state, since } = useConnection();
  const [late, setLate] = useState(false);
  useEffect(() => {
    setLate(false);
    if (state === 'open') return;
    const timer = setTimeout(() => setLate(true), Math.max(0, since + patienceMs - Date.now()));
    return () => clearTimeout(timer);
  }, [state, since]);
  return late;
}

/** What a person can do; the wording depends on where the program runs. */
export function whatToDo(): string {
  return window.tillermarkDesktop === undefined
    ? 'Look at the window where Tillermark was started: if it has ended, start it again, then open the address it prints.'
    : 'Close this window and start Tillermark again. Nothing that was saved is lost.';
}

/** Shown when the core has never answered this page. */
export function Reconnecting() {
  const late = useLongLost();
  return (
    <StartPage title="Reconnecting ...">
      <BusyNote>The program does not answer yet. Trying again every second.</BusyNote>
      {late ? <p>{whatToDo()}</p> : null}
    </StartPage>
  );
}
