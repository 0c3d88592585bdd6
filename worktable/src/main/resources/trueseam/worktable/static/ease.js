// Reads the picture out at one height: by the pointer, by touch, or by the slider's own keys. All words come with the page.

const SVG = "http://www.w3.org/2000/svg";

function begin() {
  const picture = document.querySelector("#ease-drawing svg");
  const slider = document.getElementById("ease-height");
  if (!picture || !slider || slider.dataset.ready) return;
  slider.dataset.ready = "yes";
  const readings = [...document.querySelectorAll("#ease-readings li")].map(li => ({ down: Number(li.dataset.down), says: li.textContent }));
  const says = document.getElementById("ease-says");
  const box = picture.viewBox.baseVal;
  const mark = document.createElementNS(SVG, "line");
  mark.setAttribute("class", "ease-mark");
  mark.setAttribute("x1", box.x + box.width * 0.17);
  mark.setAttribute("x2", box.x + box.width * 0.83);
  picture.append(mark);

  const read = at => {
    const reading = readings[at];
    mark.setAttribute("y1", reading.down);
    mark.setAttribute("y2", reading.down);
    says.textContent = reading.says;
    slider.value = at;
    slider.setAttribute("aria-valuetext", reading.says);
  };
  const nearest = event => {
    const frame = picture.getBoundingClientRect();
    const down = box.y + (event.clientY - frame.top) / frame.height * box.height;
    let best = 0;
    readings.forEach((reading, i) => {
      if (Math.abs(reading.down - down) < Math.abs(readings[best].down - down)) best = i;
    });
    return best;
  };
  slider.addEventListener("input", () => read(Number(slider.value)));
  picture.addEventListener("pointermove", event => read(nearest(event)));
  picture.addEventListener("pointerdown", event => { read(nearest(event)); slider.focus(); });
  document.getElementById("ease-read").hidden = false;
  read(Number(slider.value));
}

begin();
document.addEventListener("htmx:afterSettle", begin);
