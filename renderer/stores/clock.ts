import { defineStore } from "pinia";
import { ref } from "vue";

/** The moment now, ticking once a second, for ages and running clocks. The domain never reads a clock itself. */
export const useClock = defineStore("clock", () => {
  const now = ref(new Date().toISOString());
  setInterval(() => (now.value = new Date().toISOString()), 1000);
  return { now };
});
