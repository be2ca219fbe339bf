import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { orpc } from '../../api/client.ts';
import { Page } from '../../parts/page.tsx';
import { DeskBody } from './desk-body.tsx';
import { StartLoader } from './start-loader.tsx';
import classes from './weight-bench.module.css';

/** A what-if without records: a bow of usual sizes, every figure to be changed. */
export function WhatIfDesk() {
  const query = useQuery({
    ...orpc.plans.startBlank.queryOptions(),
    // What is typed rests on the first answer only.
    staleTime: Number.POSITIVE_INFINITY,
  });
  return (
    <Page title="What-if" actions={<Link href="/weight-bench">Choose a bow instead</Link>}>
      <StartLoader query={query}>
        {(start) => (
          <DeskBody start={start} story={{ weighings: [] }}>
            <p className={classes.quiet}>
              A longbow of usual sizes to begin with. Change what you know of yours; nothing here is
              recorded.
            </p>
          </DeskBody>
        )}
      </StartLoader>
    </Page>
  );
}
