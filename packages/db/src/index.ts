export * from './channels.ts';
export * from './connect.ts';
export * from './listen.ts';
export * from './with-garage.ts';
export * from './work/index.ts';
