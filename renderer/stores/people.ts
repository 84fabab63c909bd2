import { defineStore } from "pinia";
import { ref, watch } from "vue";

const key = "flocwright.person";

/** Who sits at this screen: the name that stands beside every change and approval made here. */
export const usePeople = defineStore("people", () => {
  const current = ref(localStorage.getItem(key) ?? "");
  watch(current, (name) => localStorage.setItem(key, name));
  return { current };
});
