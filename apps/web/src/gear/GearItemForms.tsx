'use client';

import { AddItemForm } from '../items/AddItemForm.tsx';
import { ChangeItemForm } from '../items/ChangeItemForm.tsx';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** The form of a new item of a set, a tool or a person. */
export function AddGearItem(where: PieceWhere) {
  return <AddItemForm owned={usePiece(where).owned} />;
}

/** The form of an item that stands on its list. */
export function ChangeGearItem({ itemId, ...where }: PieceWhere & { itemId: string }) {
  return <ChangeItemForm owned={usePiece(where).owned} itemId={itemId} />;
}
