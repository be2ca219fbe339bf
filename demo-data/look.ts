import Database from 'better-sqlite3';
const d = new Database(process.argv[2] ?? '', { readonly: true });
console.log(d.prepare('select stage,going_home,count(*) n from shop_order group by 1,2').all());
console.log(d.prepare('select count(*) n from command').get(), d.prepare('select count(*) n from attachment').get(), d.prepare('select min(at) a,max(at) b from command').get());
for (const t of ['customer','bow','shop_order','finding','incident','undershoot','hold','reminder','task','shipment','reading','consent','consent_answer','paper']) console.log(t, (d.prepare('select count(*) n from '+t).get() as {n:number}).n);
