export * from './book.ts';
export * from './common.ts';
export * from './entry.ts';
export * from './item.ts';
export * from './quantity.ts';
