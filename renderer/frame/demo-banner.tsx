import { Button } from '@mantine/core';
import { useMutation, useQuery } from '@tanstack/react-query';
import { api, orpc } from '../api/client.ts';
import { sentenceOf } from '../api/errors.ts';
import { showFolder } from '../api/show-folder.ts';
import classes from './frame.module.css';

/** Over every screen of the demo shop, so that nobody takes it for the real one. */
export function DemoBanner() {
  const shop = useQuery(orpc.shop.get.queryOptions());
  const leave = useMutation({
    mutationFn: () => api.system.leaveDemo(),
    onSuccess: showFolder,
  });
  if (shop.data?.isDemo !== true) return null;
  return (
    <section className={classes.demo} aria-label="Demo shop">
      <span>
        <strong>Demo shop.</strong> Invented people. Nothing here is real.
        {leave.error === null ? '' : ` ${sentenceOf(leave.error)}`}
      </span>
      <Button variant="default" loading={leave.isPending} onClick={() => leave.mutate()}>
        Leave the demo
      </Button>
    </section>
  );
}
