import { chromium } from '@playwright/test';
import fs from 'node:fs';
const [,, start, list, widths='360,1280', looks='paper'] = process.argv;
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const stateFile='/tmp/oilscr/state.json';
const ctx = await b.newContext(fs.existsSync(stateFile)?{storageState:stateFile}:{});
const p = await ctx.newPage();
let home;
if(!fs.existsSync(stateFile)){
  await p.goto(start); await p.getByRole('button',{name:/demo garage/i}).click();
  await p.waitForTimeout(8000); await p.screenshot({path:'/tmp/oilscr/start.png'}); await p.waitForURL(u=>u.pathname.startsWith('/g/'),{timeout:60000}); home=p.url(); await ctx.storageState({path:stateFile}); fs.writeFileSync('/tmp/oilscr/home',home);
} else home=fs.readFileSync('/tmp/oilscr/home','utf8');
for (const look of looks.split(',')) for(const w of widths.split(',')) for(const item of list.split(',')){
  const [name,path]=item.split('=');
  await p.setViewportSize({width:+w,height:w==='360'?740:900});
  await p.goto(path.startsWith('/')?new URL(path,home).href:home+'/'+path);
  await p.evaluate(l=>{document.documentElement.dataset.theme=l},look);
  await p.waitForTimeout(600);
  await p.screenshot({path:`/tmp/oilscr/${name}-${w}-${look}.png`,fullPage:true});
}
await b.close();
