import { Link } from 'wouter';
import { decimal } from '../../../../shared/measure.ts';
import { addressLines } from '../../../parts/address-fields.tsx';
import { Facts } from '../../../parts/facts.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { styleWords, wordOf } from '../../customers/customer-words.ts';
import { useOrder } from '../order-screen.tsx';
import { IdentifyCustomer } from './identify-customer.tsx';
import { LongText } from './long-text.tsx';

/** Whose bow it is and how to reach them. */
export function CustomerFacts() {
  const { customer } = useOrder().order;
  if (customer === null) {
    return (
      <Panel title="Customer">
        <p style={{ margin: 0 }}>The shop's own bow.</p>
      </Panel>
    );
  }
  return (
    <Panel title="Customer" actions={<Link href={`/customers/${customer.id}`}>Open customer</Link>}>
      <Facts
        facts={[
          ['Name', customer.name],
          ['Phone', customer.phone],
          ['E-mail', customer.email],
          ['Address', addressLines(customer.address).join(', ')],
          [
            'Shoots',
            customer.shootingStyle === 'unknown' ? '' : wordOf(styleWords, customer.shootingStyle),
          ],
          ['Own draw', customer.ownDrawIn === null ? '' : `${decimal(customer.ownDrawIn, 2)}" AMO`],
        ]}
      />
      <LongText label="Notes" text={customer.notes} />
      <IdentifyCustomer />
    </Panel>
  );
}
