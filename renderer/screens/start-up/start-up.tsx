import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { orpc } from '../../api/client.ts';
import { useConnection } from '../../api/connection.ts';
import { isUnanswered } from '../../api/errors.ts';
import { useWho } from '../../api/who.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { ChoosePerson } from './choose-person.tsx';
import { FirstStart } from './first-start.tsx';
import { NeedsYouScreen } from './needs-you-screen.tsx';
import { FillingDemoScreen, OpeningScreen } from './opening-screen.tsx';
import { Reconnecting } from './reconnecting.tsx';
import { StartPage } from './start-page.tsx';

const askAgainMs = 700;

/** Leads from a starting core to somebody working; then shows its children. */
export function StartUp({ children }: { children: ReactNode }) {
  const status = useQuery({
    ...orpc.system.status.queryOptions(),
    refetchInterval: (query) => {
      const waits = query.state.data === undefined || isUnanswered(query.state.error);
      return waits || query.state.data?.startUp.phase !== 'ready' ? askAgainMs : false;
    },
  });
  const { data, error } = status;
  const lost = useConnection().state === 'lost';
  if (data === undefined) {
    // A query that asks again forgets its error, so the connection tells waiting from lost.
    if (lost || isUnanswered(error)) return <Reconnecting />;
    if (error === null) return <OpeningScreen phase="locating" />;
    return (
      <StartPage title="Tillermark cannot be reached">
        <ErrorNote error={error} onAgain={() => void status.refetch()} />
      </StartPage>
    );
  }
  if (data.startUp.phase === 'needs-you') {
    return (
      <NeedsYouScreen
        needs={data.startUp}
        dataFolder={data.dataFolder}
        demoTrouble={data.demoTrouble}
      />
    );
  }
  if (data.startUp.phase === 'filling-demo') return <FillingDemoScreen {...data.startUp} />;
  if (data.startUp.phase !== 'ready') return <OpeningScreen phase={data.startUp.phase} />;
  if (data.isNew) return <FirstStart dataFolder={data.dataFolder} demoTrouble={data.demoTrouble} />;
  return <SignedOn>{children}</SignedOn>;
}

function SignedOn({ children }: { children: ReactNode }) {
  const who = useWho();
  return who === null ? <ChoosePerson /> : children;
}
