import { Link } from 'wouter';
import { EmptyNote } from '../parts/notes.tsx';
import { Page } from '../parts/page.tsx';

export function UnknownScreen() {
  return (
    <Page title="No such screen">
      <EmptyNote title="This address leads nowhere.">
        <Link href="/board">Go to the board</Link>
      </EmptyNote>
    </Page>
  );
}
