// Where a shop is set up, proposes the time zone that this browser is in; whoever fills the form in may choose another.
(() => {
  const choice = document.querySelector("select[data-guess]");
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (choice && Array.from(choice.options).some((o) => o.value === here)) {
    choice.value = here;
  }
})();
