import type { StartUpState } from '../../../shared/start-up.ts';
import { BusyNote } from '../../parts/notes.tsx';
import { StartPage } from './start-page.tsx';

type BusyPhase = Exclude<StartUpState['phase'], 'ready' | 'needs-you'>;

const sentences: Record<BusyPhase, string> = {
  locating: 'Looking for the data folder ...',
  locking: 'Making sure that nobody else has the shop open ...',
  opening: 'Opening the shop file ...',
  checking: 'Checking the shop file ...',
  'backing-up': 'Making a backup before the shop file is brought up to date ...',
  migrating: 'Bringing the shop file up to date. Leave the program running ...',
};

export function OpeningScreen({ phase }: { phase: BusyPhase }) {
  return (
    <StartPage title="Opening the shop">
      <BusyNote>{sentences[phase]}</BusyNote>
    </StartPage>
  );
}
