import { Button, Group, Progress } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import type { BusyPhase, StartUpState } from '../../../shared/start-up.ts';
import { api } from '../../api/client.ts';
import { showFolder } from '../../api/show-folder.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { StartPage } from './start-page.tsx';

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

type Filling = Extract<StartUpState, { phase: 'filling-demo' }>;

/** The demo shop is being made up: how far it is, and the way back. */
export function FillingDemoScreen({ done, words }: Filling) {
  const giveUp = useMutation({
    mutationFn: () => api.system.leaveDemo(),
    onSuccess: showFolder,
  });
  const percent = Math.round(done * 100);
  return (
    <StartPage title="Making the demo shop">
      <p>
        Invented people, bows and photographs are put into a folder of their own. This takes less
        than a minute, once.
      </p>
      <Progress value={percent} size="xl" aria-label="Demo shop" />
      <p aria-live="off">
        {percent} % done. {words}
      </p>
      {giveUp.error === null ? null : <ErrorNote error={giveUp.error} />}
      <Group>
        <Button variant="default" loading={giveUp.isPending} onClick={() => giveUp.mutate()}>
          Cancel and go back
        </Button>
      </Group>
    </StartPage>
  );
}
