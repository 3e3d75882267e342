const answer = async (address) => (await fetch(address)).json();

function cell(row, text) {
  row.insertCell().textContent = text ?? "–";
}

async function show() {
  const { inquiries } = await answer("/api/v1/inquiries");
  const list = document.getElementById("list");
  list.replaceChildren();
  for (const inquiry of inquiries) {
    const row = list.insertRow();
    const drawing = new DOMParser().parseFromString(inquiry.thumbnailSvg ?? "<svg xmlns='http://www.w3.org/2000/svg'/>", "image/svg+xml");
    row.insertCell().append(drawing.documentElement);
    cell(row, inquiry.name);
    cell(row, inquiry.head.verdictWords);
    cell(row, inquiry.planningJobId ? "planning" : inquiry.head.cycleS);
    cell(row, inquiry.head.pieceCost ? `${inquiry.head.pieceCost} ${inquiry.head.currency}` : null);
  }
  if (inquiries.some((inquiry) => inquiry.planningJobId)) {
    setTimeout(show, 1000);
  }
}

document.getElementById("foot").textContent = (await answer("/api/v1/about")).caution;
await show();
