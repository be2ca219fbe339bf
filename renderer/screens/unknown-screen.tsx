import { Button } from '@mantine/core';
import { Link } from 'wouter';
import { EmptyNote } from '../parts/notes.tsx';
import { Page } from '../parts/page.tsx';

export function UnknownScreen() {
  return (
    <Page title="No such screen">
      <EmptyNote title="This address leads nowhere.">
        <Button component={Link} href="/board">
          Go to the board
        </Button>
      </EmptyNote>
    </Page>
  );
}
