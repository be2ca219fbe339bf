import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { orpc } from '../../api/client.ts';
import { today } from '../../parts/days.ts';
import { errorsUnder } from '../../parts/field-errors.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { CustomerFieldsForm, emptyCustomer } from '../customers/customer-form.tsx';
import { CustomerSearch } from './customer-search.tsx';
import classes from './intake.module.css';
import { emptyIntake, type IntakeForm, unknownSender } from './intake-form.ts';

export interface SectionProps {
  form: IntakeForm;
  edit: (part: Partial<IntakeForm>) => void;
  errors: Record<string, string>;
}

/** A bow belongs to its owner: another owner, another bow. */
const noBow = { bowIs: emptyIntake.bowIs, bowId: '' } as const;

/** Whose bow it is: a returning customer, a new one, or the shop itself. */
export function WhoSection({ form, edit, errors }: SectionProps) {
  const body = useRef<HTMLDivElement>(null);
  const before = useRef(form.customerIs);
  useEffect(() => {
    // The search field is gone with the choice: the focus goes on to what came in its place.
    if (before.current !== form.customerIs) {
      const field = body.current?.querySelector<HTMLElement>('input');
      const button = body.current?.closest('section')?.querySelector<HTMLElement>('button');
      (field ?? button)?.focus();
    }
    before.current = form.customerIs;
  }, [form.customerIs]);
  const search = (
    <CustomerSearch
      typed={form.customerName}
      error={errors.customer}
      onTyped={(customerName) => edit({ customerName })}
      onKnown={({ id, name }) =>
        edit({ customerIs: 'known', customerId: id, customerName: name, ...noBow })
      }
      onNew={() => {
        const name = form.customerName.trim();
        const customer = form.customer.name === '' ? emptyCustomer : form.customer;
        edit({ customerIs: 'new', customer: { ...customer, name }, ...noBow, bowIs: 'new' });
      }}
      onShop={() => edit({ customerIs: 'shop', customerName: "The shop's own bow", ...noBow })}
    />
  );
  return (
    <Panel
      title="Who"
      actions={
        form.customerIs === 'open' ? null : (
          <Button
            variant="default"
            onClick={() =>
              edit({
                customerIs: 'open',
                customerName: form.customerIs === 'shop' ? '' : form.customerName,
              })
            }
          >
            Somebody else
          </Button>
        )
      }
    >
      <div ref={body}>
        {form.customerIs === 'open' ? (
          <div className={classes.stack}>
            {search}
            <div className={classes.buttons}>
              <Button variant="default" onClick={() => edit(unknownSender(form, today()))}>
                Unknown sender of a box
              </Button>
            </div>
          </div>
        ) : null}
        {form.customerIs === 'known' ? (
          <KnownCustomer id={form.customerId} name={form.customerName} />
        ) : null}
        {form.customerIs === 'shop' ? (
          <p className={classes.chosenName} style={{ margin: 0 }}>
            The shop's own bow
          </p>
        ) : null}
        {form.customerIs === 'new' ? (
          <CustomerFieldsForm
            value={form.customer}
            errors={errorsUnder(errors, 'customer')}
            onChange={(customer) => edit({ customer, customerName: customer.name })}
          />
        ) : null}
      </div>
    </Panel>
  );
}

function KnownCustomer({ id, name }: { id: string; name: string }) {
  const query = useQuery(orpc.customers.get.queryOptions({ input: { id } }));
  const customer = query.data?.customer;
  const orders = query.data?.orders.length ?? 0;
  return (
    <>
      <p className={classes.chosenName} style={{ margin: 0 }}>
        {customer?.name ?? name}
      </p>
      <span className={classes.quiet}>
        {customer === undefined
          ? ''
          : [
              customer.address.city,
              customer.phone,
              customer.email,
              orders === 1 ? '1 order before' : `${orders} orders before`,
            ]
              .filter(Boolean)
              .join(', ')}
      </span>
      {query.isError ? (
        <ErrorNote error={query.error} onAgain={() => void query.refetch()} />
      ) : null}
    </>
  );
}
