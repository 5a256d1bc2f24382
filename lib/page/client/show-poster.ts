/** Opens the stage with the first still picture on it, until there is a scene. */
export function showPoster(): void {
  const stage = document.querySelector<HTMLElement>('#stage')!;
  const still = document.querySelector('.stills svg')!.cloneNode(true) as SVGElement;
  still.classList.add('poster');
  still.setAttribute('aria-hidden', 'true');
  still.removeAttribute('role');
  stage.append(still);
  stage.closest<HTMLElement>('section')!.hidden = false;
}
