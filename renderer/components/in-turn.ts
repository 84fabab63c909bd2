import { effect, onScopeDispose, shallowRef, type ShallowRef } from "vue";
import { drawInTurn, leaveTurn } from "../charts/draw-turns.ts";

/**
 * What is worked out from the study and looked at beside the main thing: made at once the first time, and after that a
 * task behind whatever it hangs on, so that the edit that moved it is answered first.
 */
export function inTurn<T>(make: () => T): Readonly<ShallowRef<T>> {
  const made = shallowRef<T>();
  const remake = effect(() => void (made.value = make()), { scheduler: () => drawInTurn(remake) });
  onScopeDispose(() => leaveTurn(remake));
  return made as ShallowRef<T>;
}
