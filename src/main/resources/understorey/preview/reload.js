(() => {
  'use strict';
  const tag = document.currentScript.dataset.tag;
  const box = document.createElement('div');
  box.id = 'understorey-faults';
  box.setAttribute('role', 'alert');
  box.style.cssText = 'position:fixed;inset:auto 0 0 0;max-height:60vh;overflow:auto;z-index:2147483647;margin:0;padding:1rem;'
    + 'background:#1c1c1c;color:#f4f4f4;border-top:4px solid #e5484d;font:14px/1.45 ui-monospace,monospace;white-space:pre;tab-size:4';
  const hide = document.createElement('button');
  hide.type = 'button';
  hide.textContent = 'Hide';
  hide.style.cssText = 'position:sticky;left:0;display:block;margin:0 0 .75rem;padding:.3rem .8rem;font:inherit;color:#1c1c1c;background:#f4f4f4;border:0';
  hide.onclick = () => box.remove();
  const text = document.createElement('span');
  box.append(hide, text);
  const show = faults => {
    text.textContent = faults;
    if (faults) document.body.append(box); else box.remove();
  };
  let source;
  const listen = () => {
    if (source) source.close();
    source = undefined;
    if (document.hidden) return;
    source = new EventSource('/.understorey/changes?page=' + encodeURIComponent(location.pathname) + '&tag=' + tag);
    source.addEventListener('faults', event => show(JSON.parse(event.data)));
    source.addEventListener('page', () => location.reload());
  };
  document.addEventListener('visibilitychange', listen);
  addEventListener('pagehide', () => source && source.close());
  addEventListener('pageshow', event => event.persisted && listen());
  listen();
})();
