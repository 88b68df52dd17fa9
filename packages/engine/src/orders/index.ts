export * from './order-by.ts';
export * from './standing-order.ts';
