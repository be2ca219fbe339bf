import { Button, Group } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import type { NeedsYou, StartUpChoice, StartUpReason } from '../../../shared/start-up.ts';
import { api, orpc } from '../../api/client.ts';
import { queryClient } from '../../api/queries.ts';
import { Mark } from '../../parts/mark.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { ChooseFolder } from './choose-folder.tsx';
import { LookAtDemo } from './look-at-demo.tsx';
import { RestoreBackup } from './restore-backup.tsx';
import { StartPage } from './start-page.tsx';

const titles: Record<StartUpReason, string> = {
  'wrong-folder': 'This folder holds no shop',
  'not-our-file': 'The shop file is not a Tillermark file',
  'not-writable': 'The data folder cannot be written',
  locked: 'The shop is already open',
  'newer-file': 'The shop file is newer than this program',
  corrupt: 'The shop file is damaged',
  'failed-migration': 'The shop file could not be brought up to date',
  'disk-full': 'The disk is full',
};

interface NeedsYouScreenProps {
  needs: NeedsYou;
  dataFolder: string;
  demoTrouble: string | null;
}

/** Start-up waits for a decision: what is wrong in one sentence, and every way on. */
export function NeedsYouScreen({ needs, dataFolder, demoTrouble }: NeedsYouScreenProps) {
  const resolve = useMutation({
    mutationFn: (given: { choice: StartUpChoice; argument?: string }) => api.system.resolve(given),
    onSuccess: (status) => queryClient.setQueryData(orpc.system.status.queryKey(), status),
  });
  return (
    <StartPage title={titles[needs.reason]}>
      <Mark kind="attention">{needs.sentence}</Mark>
      <p>
        Data folder: <strong>{dataFolder}</strong>
      </p>
      {resolve.error === null ? null : <ErrorNote error={resolve.error} />}
      {needs.choices.map((choice, place) => (
        <Choice
          key={choice}
          choice={choice}
          isFirst={place === 0}
          backups={needs.backups}
          busy={resolve.isPending}
          onChoose={(argument) =>
            resolve.mutate(argument === undefined ? { choice } : { choice, argument })
          }
        />
      ))}
      <LookAtDemo trouble={demoTrouble} />
    </StartPage>
  );
}

interface ChoiceProps {
  choice: StartUpChoice;
  /** The way the core puts first is the likeliest to help. */
  isFirst: boolean;
  backups: readonly string[];
  busy: boolean;
  onChoose: (argument?: string) => void;
}

function Choice({ choice, isFirst, backups, busy, onChoose }: ChoiceProps) {
  switch (choice) {
    case 'try-again':
      return (
        <Group>
          <Button
            variant={isFirst ? 'filled' : 'default'}
            loading={busy}
            onClick={() => onChoose()}
          >
            Try again
          </Button>
        </Group>
      );
    case 'restore-backup':
      return <RestoreBackup backups={backups} busy={busy} onRestore={onChoose} />;
    case 'choose-folder':
      return <ChooseFolder busy={busy} onChoose={onChoose} />;
  }
}
