-- SPDX-License-Identifier: MIT
-- A shop of schema 2 as the program wrote it that had no layers in the file: first in, first out, 14 movements,
-- among them a split of two layers, a cut, an issue and one that was taken back.
PRAGMA application_id = 1181512564;
PRAGMA user_version = 2;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE shop (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  title TEXT NOT NULL,
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  costing TEXT NOT NULL,
  made_at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
INSERT INTO shop VALUES(1,'Two Beacons, first in','USD','first in, first out',1795851412840,X'1a29e84eadc2656662506dc9b9030485d539ffd3bc0ed920d0e1b28bc60d54a8');
CREATE TABLE place (
  sequence INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE CHECK (id <> ''),
  title TEXT NOT NULL,
  kind TEXT NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
INSERT INTO place VALUES(1,'A1','A1','bin',X'2a8981882bc822693dd6757ee2a47d49e9635105a75ec532b4606f920a8445d0');
INSERT INTO place VALUES(2,'A2','A2','bin',X'bd4d39aece2fda7d082c4644b3d20ccaf845362d1651f86362dea2e39edd3fcc');
INSERT INTO place VALUES(3,'trailer-1','trailer-1','drawer',X'423febe829d763585087954bd769fe20b781629e1625c3a4b671c08043ec6838');
INSERT INTO place VALUES(4,'car-1','car-1','car',X'c69bd33ae541462192ed12ff91cdc8e926d35b5cb9273cedc3e9f801d51db1f5');
INSERT INTO place VALUES(5,'scrap','scrap','scrap',X'6928b9e581bc1352a454d3c3084c338ce876e83f3c9dc50657eaa3e31ab1f516');
INSERT INTO place VALUES(6,'used-up','used-up','used up',X'f1d974215b042d2b0a94e7c20663f6ac29da32398e56a6c63cdf12ab30b4968d');
INSERT INTO place VALUES(7,'opening','opening','opening',X'a3ae14b8c55c3431261dcac378d08e4f613e7661baffa29c342eb22dc60aa785');
INSERT INTO place VALUES(8,'bench','bench','bench',X'25a3087a06b04d9ddc0b0c4f93ac0b6979d3677d78bfc2c55762a01f464da137');
INSERT INTO place VALUES(9,'difference','difference','difference',X'634f8b18229f1c29181b49195c6646b2c0047e6fd9e34a4792306186724a3588');
INSERT INTO place VALUES(10,'supplier','supplier','supplier',X'0c4029884deb5b84420ab137de42239da09366e26ac5b257ffb82ee467090d46');
CREATE TABLE document (
  sequence INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version > 0),
  content TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32),
  UNIQUE (name, version)
) STRICT;
INSERT INTO document VALUES(1,'builds.toml',1,replace('# The builds that the shop has planned. Each shows something else on purpose; together every kind of\n# finding can be seen.\n\n# A union was put where an adapter belongs: its flare goes straight into the rail''s O-ring boss.\n[[build]]\nid = "coupe-fuel"\ntitle = "Coupe, hill-climb: fuel for E85 injection"\ntemplate = "injection-frame-rail"\ncar = "car-1"\nby = "2026-12-12"\nprefer = "shelf"\nanswers = { fluid = "E85", power = "520 hp", cylinders = "six" }\n\n','\n',char(10)),'opening count',1795851412840,X'962d58a14da561ad234605313cb9912fab7924c131bb04f99e62fba9eb88f366');
INSERT INTO document VALUES(2,'offers.csv',1,replace('part,supplier,supplier part,currency,pack,minimum,prices,lead days\n','\n',char(10)),'opening count',1795851412840,X'd610de3b6fd14b9ba1c5ef0e0ba25c88bb96b7b820ed4be329c6479d25749fe5');
INSERT INTO document VALUES(3,'parts/adapters.csv',1,replace('part,kind,description,ports,material,seal,words,rated,fitting\nAD-3-3,adapter,"adapter, O-ring boss -3 to flare -3",boss: ORB -3 male; flare: AN -3 male,steel,,,3000 psi,\nAD-4-4,adapter,"adapter, O-ring boss -4 to flare -4",boss: ORB -4 male; flare: AN -4 male,aluminium,,,1000 psi,\n','\n',char(10)),'opening count',1795851412840,X'5a1c6651935b8ad99beb185987b599af35f3843732dc28531556074d0931f0d6');
INSERT INTO document VALUES(4,'parts/hoses.csv',1,replace('part,kind,description,unit,ports,suits,rated,lowest,highest,construction,dash,bore,liner,conductive,clamped,bend radius\nEP-6,hose,"hose -6, EPDM, coolant",in,cut: HOSE EP -6,water-glycol,150 psi,-40 C,130 C,EP,6,0.375 in,EPDM,no,yes,1.5 in\nEP-10,hose,"hose -10, EPDM, coolant",in,cut: HOSE EP -10,water-glycol,150 psi,-40 C,130 C,EP,10,0.625 in,EPDM,no,yes,2.5 in\n','\n',char(10)),'opening count',1795851412840,X'da0a7fbd73a1d86b90f098255ad58025ef7c3c49f8cb84cdd94ae88e41d10632');
INSERT INTO document VALUES(5,'shop.toml',1,replace('# An invented shop.\ntitle = "Two Beacons, first in"\ncurrency = "USD"\ncosting = "first in, first out"\n\n[[place]]\nid = "A1"\ntitle = "A1"\nkind = "bin"\n\n[[place]]\nid = "A2"\ntitle = "A2"\nkind = "bin"\n\n[[place]]\nid = "trailer-1"\ntitle = "trailer-1"\nkind = "drawer"\n\n[[place]]\nid = "car-1"\ntitle = "car-1"\nkind = "car"\n\n[[place]]\nid = "scrap"\ntitle = "scrap"\nkind = "scrap"\n\n[[place]]\nid = "used-up"\ntitle = "used-up"\nkind = "used up"\n\n[[place]]\nid = "opening"\ntitle = "opening"\nkind = "opening"\n\n[[place]]\nid = "bench"\ntitle = "bench"\nkind = "bench"\n\n[[place]]\nid = "difference"\ntitle = "difference"\nkind = "difference"\n\n[[place]]\nid = "supplier"\ntitle = "supplier"\nkind = "supplier"\n','\n',char(10)),'opening count',1795851412840,X'004fc50dae2136a3a872b63feeeaeb8508429d2efc6f6c26ee6dc8bb44b28245');
INSERT INTO document VALUES(6,'stock.csv',1,replace('part,place,quantity,value,lot,condition,missing\nAD-3-3,A1,10,74.50,,new,\n','\n',char(10)),'opening count',1795851412840,X'ca0cb988576b7f3503e9c853cde247ac04fc4d084b3c7f1e0a181a54b7509d2f');
INSERT INTO document VALUES(7,'suppliers.csv',1,replace('supplier,name,lead days\nHAL,Hallenbruck Leitungsbau,12\n','\n',char(10)),'opening count',1795851412840,X'72f0a20e6a6d9324c6e329e4dbcb71fffea839e3d0b4aff9de8fc77d9a3d7ad6');
INSERT INTO document VALUES(8,'templates/injection-frame-rail.toml',1,replace('# Line sizes by power: common practice, no source.\n# 100 µm before an electric pump, 10 µm after it: common practice, no source.\n# Flow: power × consumption × 1.25; pounds an hour for each horsepower: gasoline 0.5, E85 0.72,\n# methanol 1.1 (common practice).\nid = "injection-frame-rail"\ntitle = "Injection, pump on the frame rail, return loop"\nsystem = "fuel"\nfluid = "{fluid}"\nfilters = "around electric pump"\n\n[[question]]\nid = "fluid"\ntitle = "fluid"\nform = "choice"\nchoices = ["gasoline", "E85", "methanol"]\ndefault = "E85"\n\n[[question]]\nid = "power"\ntitle = "power"\nform = "measure"\ndimension = "power"\ndefault = "450 hp"\nleast = "50 hp"\nmost = "2000 hp"\n\n[[question]]\nid = "cylinders"\ntitle = "cylinders"\nform = "choice"\nchoices = ["four", "six", "eight"]\ndefault = "six"\n\n[[question]]\nid = "rail-pressure"\ntitle = "rail pressure"\nform = "measure"\ndimension = "pressure"\ndefault = "43.5 psi"\nleast = "36 psi"\nmost = "75 psi"\n\n[[question]]\nid = "tank"\ntitle = "tank"\nform = "choice"\nchoices = ["cell", "steel tank"]\ndefault = "cell"\n\n[[question]]\nid = "hose"\ntitle = "hose"\nform = "choice"\nchoices = ["PT", "NB"]\ndefault = "PT"\nwhen = "fluid is gasoline"\n\n[[question]]\nid = "supply"\ntitle = "supply line"\nform = "measure"\ndimension = "length"\ndefault = "5 ft 6 in"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "pump-line"\ntitle = "pre-filter to pump"\nform = "measure"\ndimension = "length"\ndefault = "14 in"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "post"\ntitle = "pump to post-filter"\nform = "measure"\ndimension = "length"\ndefault = "16 in"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "pressure"\ntitle = "pressure line"\nform = "measure"\ndimension = "length"\ndefault = "11 ft"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "rail-line"\ntitle = "rail to regulator"\nform = "measure"\ndimension = "length"\ndefault = "2 ft"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "return"\ntitle = "return line"\nform = "measure"\ndimension = "length"\ndefault = "12 ft"\nleast = "2 in"\nmost = "40 ft"\n\n[[question]]\nid = "gauge"\ntitle = "gauge at the regulator"\nform = "yes/no"\ndefault = "yes"\n\n[[question]]\nid = "injectors"\ntitle = "injectors with it"\nform = "yes/no"\ndefault = "no"\n\n[[station]]\nid = "cell"\ntitle = "tank"\nkind = "tank"\nlevel = "suction"\npart = [ { when = "tank is steel tank", is = "ST-16" }, { is = "FC-20" } ]\n\n[[station]]\nid = "rollover"\ntitle = "roll-over valve"\nkind = "rollover valve"\nlevel = "return"\npart = "RV-8"\nbracketed = false\n\n[[station]]\nid = "prefilter"\ntitle = "pre-filter"\nkind = "filter"\nlevel = "suction"\nwords = ["in-line", "serviceable"]\nmicron = "75 to 150"\nflow = [\n  { when = "fluid is methanol and power above 480 hp", is = "650 L/h" },\n  { when = "fluid is methanol", is = "400 L/h" },\n  { when = "fluid is E85 and power above 700 hp", is = "650 L/h" },\n  { when = "fluid is E85 and power above 400 hp", is = "380 L/h" },\n  { when = "power above 1000 hp", is = "650 L/h" },\n  { when = "power above 500 hp", is = "400 L/h" },\n  { is = "200 L/h" },\n]\npart = [\n  { when = "fluid is methanol and power above 450 hp", is = "PF-100-12" },\n  { when = "fluid is methanol", is = "PF-100-10" },\n  { when = "power above 900 hp", is = "PF-100-12" },\n  { when = "power above 500 hp", is = "PF-100-10" },\n  { is = "PF-100-8" },\n]\nspare-elements = 1\n\n[[station]]\nid = "pump"\ntitle = "pump"\nkind = "pump"\nlevel = "suction"\nwords = ["in-line"]\nflow = [\n  { when = "fluid is methanol and power above 480 hp", is = "650 L/h" },\n  { when = "fluid is methanol", is = "400 L/h" },\n  { when = "fluid is E85 and power above 700 hp", is = "650 L/h" },\n  { when = "fluid is E85 and power above 400 hp", is = "380 L/h" },\n  { when = "power above 1000 hp", is = "650 L/h" },\n  { when = "power above 500 hp", is = "400 L/h" },\n  { is = "200 L/h" },\n]\npressure = "{rail-pressure}"\n\n[[station]]\nid = "postfilter"\ntitle = "post-filter"\nkind = "filter"\nlevel = "pressure"\nwords = ["in-line", "serviceable"]\nmicron = "8 to 12"\nflow = [\n  { when = "fluid is methanol and power above 480 hp", is = "650 L/h" },\n  { when = "fluid is methanol", is = "400 L/h" },\n  { when = "fluid is E85 and power above 700 hp", is = "650 L/h" },\n  { when = "fluid is E85 and power above 400 hp", is = "380 L/h" },\n  { when = "power above 1000 hp", is = "650 L/h" },\n  { when = "power above 500 hp", is = "400 L/h" },\n  { is = "200 L/h" },\n]\nrated = "100 psi"\npart = [\n  { when = "fluid is methanol and power above 450 hp", is = "FF-10-8" },\n  { when = "power above 900 hp", is = "FF-10-8" },\n  { is = "FF-10-6" },\n]\nspare-elements = 1\n\n[[station]]\nid = "rail"\ntitle = "rail"\nkind = "rail"\nlevel = "pressure"\npart = [\n  { when = "cylinders is four", is = "RL-4" },\n  { when = "cylinders is six", is = "RL-6" },\n  { is = "RL-8" },\n]\nplugged = ["gauge"]\n\n[[station]]\nid = "regulator"\ntitle = "regulator"\nkind = "regulator"\nlevel = "pressure"\nwords = ["bypass"]\npressure = "{rail-pressure}"\nflow = [\n  { when = "fluid is methanol and power above 480 hp", is = "650 L/h" },\n  { when = "fluid is methanol", is = "400 L/h" },\n  { when = "fluid is E85 and power above 700 hp", is = "650 L/h" },\n  { when = "fluid is E85 and power above 400 hp", is = "380 L/h" },\n  { when = "power above 1000 hp", is = "650 L/h" },\n  { when = "power above 500 hp", is = "400 L/h" },\n  { is = "200 L/h" },\n]\n\n[[station]]\nid = "gauge"\ntitle = "gauge"\nkind = "gauge"\nlevel = "pressure"\nwords = ["high"]\nwhen = "gauge is yes"\nbracketed = false\n\n[[run]]\nid = "supply"\nlevel = "suction"\nfrom = "cell.out"\nto = "prefilter.in"\nlength = "{supply}"\ndash = [\n  { when = "fluid is methanol and power above 450 hp", is = "-12" },\n  { when = "fluid is methanol", is = "-10" },\n  { when = "power above 900 hp", is = "-12" },\n  { when = "power above 500 hp", is = "-10" },\n  { is = "-8" },\n]\nconstruction = "{hose}"\nclamps-each = 400\n\n[[run]]\nid = "pump-line"\nlevel = "suction"\nfrom = "prefilter.out"\nto = "pump.in"\nlength = "{pump-line}"\ndash = [\n  { when = "fluid is methanol and power above 450 hp", is = "-12" },\n  { when = "fluid is methanol", is = "-10" },\n  { when = "power above 900 hp", is = "-12" },\n  { when = "power above 500 hp", is = "-10" },\n  { is = "-8" },\n]\nconstruction = "{hose}"\n\n[[run]]\nid = "post"\nlevel = "pressure"\nfrom = "pump.out"\nto = "postfilter.in"\nlength = "{post}"\ndash = [\n  { when = "fluid is methanol and power above 450 hp", is = "-8" },\n  { when = "power above 900 hp", is = "-8" },\n  { is = "-6" },\n]\nconstruction = "{hose}"\n\n[[run]]\nid = "pressure"\nlevel = "pressure"\nfrom = "postfilter.out"\nto = "rail.in"\nlength = "{pressure}"\ndash = [\n  { when = "fluid is methanol and power above 450 hp", is = "-8" },\n  { when = "power above 900 hp", is = "-8" },\n  { is = "-6" },\n]\nconstruction = "{hose}"\nend-angle = "90"\nclamps-each = 400\n\n[[run]]\nid = "rail-line"\nlevel = "pressure"\nfrom = "rail.out"\nto = "regulator.in"\nlength = "{rail-line}"\ndash = [\n  { when = "fluid is methanol and power above 450 hp", is = "-8" },\n  { when = "power above 900 hp", is = "-8" },\n  { is = "-6" },\n]\nconstruction = "{hose}"\nstart-angle = "90"\n\n[[run]]\nid = "gauge-joint"\nlevel = "pressure"\nfrom = "regulator.gauge"\nto = "gauge.in"\nwhen = "gauge is yes"\n\n[[run]]\nid = "return"\nlevel = "return"\nfrom = "regulator.return"\nto = "cell.return"\nlength = "{return}"\ndash = "-6"\nconstruction = "{hose}"\nclamps-each = 400\n\n[[run]]\nid = "vent"\nlevel = "return"\nfrom = "cell.vent"\nto = "rollover.in"\n\n[[extra]]\npart = "IJ-550"\ncount = 4\nwhy = "injectors"\nwhen = "injectors is yes and cylinders is four"\n\n[[extra]]\npart = "IJ-550"\ncount = 6\nwhy = "injectors"\nwhen = "injectors is yes and cylinders is six"\n\n[[extra]]\npart = "IJ-550"\ncount = 8\nwhy = "injectors"\nwhen = "injectors is yes and cylinders is eight"\n\n[[extra]]\npart = "RE-40"\ncount = 1\nwhy = "pump relay"\n\n[[extra]]\npart = "FU-20"\ncount = 1\nwhy = "pump fuse"\n\n[[extra]]\npart = "WR-12"\ncount = 240\nwhy = "pump feed and ground"\n\n[[extra]]\npart = "TL-AN"\ncount = 1\nwhy = "flare nuts without marks"\n\n[[extra]]\npart = "TL-VJ"\ncount = 1\nwhy = "hose ends held without marks"\n\n[[extra]]\npart = "TL-CUT"\ncount = 1\nwhy = "square cuts through the braid"\n\n[[extra]]\npart = "TL-LT"\ncount = 1\nwhy = "leak test before the first start"\n','\n',char(10)),'opening count',1795851412840,X'a8bd23f72a0e126144e7daf746cb14c1af9899337c412d785fbb40b37acc1d39');
CREATE TABLE replica (
  number INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  entries INTEGER NOT NULL CHECK (entries >= 0),
  lamport INTEGER NOT NULL CHECK (lamport >= entries),
  head BLOB NOT NULL CHECK (length(head) = 32)
) STRICT;
INSERT INTO replica VALUES(1,X'73785b3dd368ed400ec42a1ad5820cf3',16,16,X'a7f80f2c17d218d851b46234a36491ea9609f273c856985c8299fcba92eefde1');
CREATE TABLE movement (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  replica INTEGER NOT NULL REFERENCES replica (number),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  lamport INTEGER NOT NULL CHECK (lamport > 0),
  part TEXT NOT NULL CHECK (part <> ''),
  quantity INTEGER NOT NULL CHECK (quantity >= 0),
  value INTEGER NOT NULL CHECK (value >= 0),
  from_place TEXT NOT NULL REFERENCES place (id),
  to_place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  document TEXT NOT NULL,
  reverses BLOB REFERENCES movement (id),
  at INTEGER NOT NULL,
  deed TEXT NOT NULL,
  new_lot TEXT,
  new_condition TEXT,
  action BLOB REFERENCES movement (id) CHECK (action <> id),
  until TEXT NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence),
  CHECK (quantity > 0 OR value > 0),
  CHECK (to_place <> from_place OR new_lot IS NOT NULL OR new_condition IS NOT NULL)
) STRICT, WITHOUT ROWID;
INSERT INTO movement VALUES(X'01a22115e56a774c9e873f5c9122a9e0',1,1,1,'AD-3-3',10,74500000,'opening','A1','','new','opening count','what lay there on the first day','stock.csv',NULL,1795851412840,'move',NULL,NULL,NULL,'',X'cc1d53190d00f9d54abea065d3ff72989916b480ecc0519cfdbf0a756e9cc28a');
INSERT INTO movement VALUES(X'01a22115e64679c2a36b88e0f5ad16a5',1,2,2,'AD-3-3',5,61250000,'supplier','A1','','new','Ada','','',NULL,1795851413062,'receive',NULL,NULL,NULL,'',X'adf7a2adce028d3fedb6a7b5813c35d741f4ec99aea846e8f65a20f00bdfbf6e');
INSERT INTO movement VALUES(X'01a22115e6df7bf4bcb77bf433339b35',1,3,3,'AD-3-3',7,70010000,'supplier','A2','L7','new','Ada','','',NULL,1795851413215,'receive',NULL,NULL,NULL,'',X'50f8bc820c254f8a8a817baadb0a7904a0d2774ca226d9eb66ff037c1582e05a');
INSERT INTO movement VALUES(X'01a22115e77e7cac87e340f9a0f00dc0',1,4,4,'AD-3-3',12,99000000,'A1','trailer-1','','new','Ada','','',NULL,1795851413374,'move',NULL,NULL,NULL,'',X'90b1e21eee9410a4d19df8582a733711d1ea1e749eef67a827b6f5f31413c4d8');
INSERT INTO movement VALUES(X'01a22115e8257d468834f9b3c29131bc',1,5,5,'EP-6',48768000,100010000,'supplier','A2','coil-1','new','Ada','','',NULL,1795851413541,'receive',NULL,NULL,NULL,'',X'67e70fa3f96612c5577707963281f26f1521d67682bf9af3504d1b8457eeab33');
INSERT INTO movement VALUES(X'01a22115e8e27d189fbb46c0c557b965',1,6,6,'EP-6',8128000,16668333,'A2','A1','coil-1','new','Ada','','',NULL,1795851413730,'cut','coil-1/1',NULL,NULL,'',X'7f8a7b672eca7c62f9e6499d996bc25b546613ab37bab6890f5f5f65f73de903');
INSERT INTO movement VALUES(X'01a22115e8e27d189fbb46c0c557b966',1,7,7,'EP-6',2438400,5000500,'A2','A1','coil-1','new','Ada','','',NULL,1795851413730,'cut','coil-1/2',NULL,X'01a22115e8e27d189fbb46c0c557b965','',X'd42decce83e5058ce7ff6a51b206ec2886fc366450128d33488d8c51c85b8c0a');
INSERT INTO movement VALUES(X'01a22115e8e27d189fbb46c0c557b967',1,8,8,'EP-6',50800,104177,'A2','scrap','coil-1','new','Ada','kerf','',NULL,1795851413730,'scrap',NULL,NULL,X'01a22115e8e27d189fbb46c0c557b965','',X'e096abe10c463c413a3aa3ec815c0941fbb24d1e69d38901b0dfcb2c6bcb8ddc');
INSERT INTO movement VALUES(X'01a22115e9a37e768f376b4c23796737',1,9,9,'AD-3-3',2,14900000,'trailer-1','A1','','new','Ada','','',NULL,1795851413923,'move',NULL,NULL,NULL,'',X'25299221bc9c8af5be1105b07e392861e1cc6bf1825fdeb9278cc217119feb5b');
INSERT INTO movement VALUES(X'01a22115eb0d7445ae0986d4a33300c7',1,11,11,'AD-3-3',2,14900000,'A1','car-1','','new','Ada','','coupe-fuel',NULL,1795851414285,'issue',NULL,NULL,NULL,'',X'134b18d9bd29345092cd53b9d33936e8e818a5abf3decc5bd363ceaa65bc4af7');
INSERT INTO movement VALUES(X'01a22115ec057bcc9909e337abdda8bc',1,12,12,'AD-3-3',1,7450000,'trailer-1','scrap','','new','Ada','thread torn','',NULL,1795851414533,'scrap',NULL,NULL,NULL,'',X'28439fc30046228ebf3e593868964a4bcfa1c9c5c8a55c795a7e9d287aa5b718');
INSERT INTO movement VALUES(X'01a22115ec8470068d8ff6c566fd171d',1,14,14,'AD-3-3',1,10001429,'A2','difference','L7','new','Ada','','',NULL,1795851414660,'count',NULL,NULL,NULL,'',X'f40829ddf21e67efefa8328e3bec21d3e916ae560e47ef108c3f9c8e773aab2c');
INSERT INTO movement VALUES(X'01a22115ed3a739e8d92a558b74c719a',1,15,15,'AD-3-3',1,7450000,'trailer-1','A1','','new','Ada','','',NULL,1795851414842,'move',NULL,NULL,NULL,'',X'630946de20a26b1c23774c2a68653aa5772c0165b0e6cf2da4833a455e5b003e');
INSERT INTO movement VALUES(X'01a22115edf977cab0f84af45c5c1ef1',1,16,16,'AD-3-3',1,7450000,'A1','trailer-1','','new','Ada','','',X'01a22115ed3a739e8d92a558b74c719a',1795851415033,'move',NULL,NULL,NULL,'',X'a7f80f2c17d218d851b46234a36491ea9609f273c856985c8299fcba92eefde1');
CREATE TABLE record (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  replica INTEGER NOT NULL REFERENCES replica (number),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  lamport INTEGER NOT NULL CHECK (lamport > 0),
  kind TEXT NOT NULL,
  subject TEXT NOT NULL CHECK (subject <> ''),
  fields TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence)
) STRICT, WITHOUT ROWID;
INSERT INTO record VALUES(X'01a22115ea377f17ae2c4c2e6486aaed',1,10,10,'promise','coupe-fuel','{"part":"AD-3-3","quantity":"2","why":""}','Ada',1795851414071,X'e76a00e1507409c3b545f564ff77de4e81a2525da16124e2daa745f610abd4a8');
INSERT INTO record VALUES(X'01a22115ec8470068d8ff6c566fd171c',1,13,13,'count','AD-3-3','{"condition":"new","expected":"7","found":"6","lot":"L7","place":"A2","why":""}','Ada',1795851414660,X'97aef1b0b66cd6ca91da44e70fcf1055cc83a7d7429a020c496481fa0b7e5ee3');
CREATE TABLE balance (
  part TEXT NOT NULL,
  place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  is_stock INTEGER NOT NULL CHECK (is_stock IN (0, 1)),
  quantity INTEGER NOT NULL,
  value INTEGER NOT NULL,
  PRIMARY KEY (part, place, lot, condition),
  CHECK (is_stock = 0 OR (quantity > 0 AND value >= 0))
) STRICT, WITHOUT ROWID;
INSERT INTO balance VALUES('AD-3-3','A1','','new',1,3,36750000);
INSERT INTO balance VALUES('AD-3-3','A2','L7','new',1,6,60008571);
INSERT INTO balance VALUES('AD-3-3','car-1','','new',0,2,14900000);
INSERT INTO balance VALUES('AD-3-3','difference','L7','new',0,1,10001429);
INSERT INTO balance VALUES('AD-3-3','opening','','new',0,-10,-74500000);
INSERT INTO balance VALUES('AD-3-3','scrap','','new',0,1,7450000);
INSERT INTO balance VALUES('AD-3-3','supplier','','new',0,-5,-61250000);
INSERT INTO balance VALUES('AD-3-3','supplier','L7','new',0,-7,-70010000);
INSERT INTO balance VALUES('AD-3-3','trailer-1','','new',1,9,76650000);
INSERT INTO balance VALUES('EP-6','A1','coil-1/1','new',1,8128000,16668333);
INSERT INTO balance VALUES('EP-6','A1','coil-1/2','new',1,2438400,5000500);
INSERT INTO balance VALUES('EP-6','A2','coil-1','new',1,38150800,78236990);
INSERT INTO balance VALUES('EP-6','scrap','coil-1','new',0,50800,104177);
INSERT INTO balance VALUES('EP-6','supplier','coil-1','new',0,-48768000,-100010000);
CREATE TABLE claim (
  part TEXT NOT NULL CHECK (part <> ''),
  build TEXT NOT NULL CHECK (build <> ''),
  promised INTEGER NOT NULL CHECK (promised >= 0),
  issued INTEGER NOT NULL,
  PRIMARY KEY (part, build)
) STRICT, WITHOUT ROWID;
INSERT INTO claim VALUES('AD-3-3','coupe-fuel',2,2);
CREATE TABLE box_check (
  sequence INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  part TEXT NOT NULL CHECK (part <> ''),
  lot TEXT NOT NULL,
  missing TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
CREATE INDEX movement_order ON movement (lamport, replica, sequence);
CREATE INDEX movement_part ON movement (part);
CREATE UNIQUE INDEX movement_reverses ON movement (reverses) WHERE reverses IS NOT NULL;
CREATE INDEX movement_document ON movement (document) WHERE document <> '';
CREATE INDEX movement_lot ON movement (lot) WHERE lot <> '';
CREATE INDEX record_subject ON record (subject, kind);
CREATE INDEX record_order ON record (lamport, replica, sequence);
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never changed'); END;
CREATE TRIGGER movement_remains BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never deleted'); END;
CREATE TRIGGER movement_once BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id OR reverses = NEW.reverses
  OR (replica = NEW.replica AND sequence = NEW.sequence))
  OR EXISTS (SELECT 1 FROM record WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a movement is never replaced'); END;
CREATE TRIGGER record_stays BEFORE UPDATE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never changed'); END;
CREATE TRIGGER record_remains BEFORE DELETE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never deleted'); END;
CREATE TRIGGER record_once BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
  OR EXISTS (SELECT 1 FROM movement WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a record is never replaced'); END;
CREATE TRIGGER document_stays BEFORE UPDATE ON document
BEGIN SELECT RAISE(ABORT, 'a document gets a new version, it is never changed'); END;
CREATE TRIGGER document_remains BEFORE DELETE ON document
BEGIN SELECT RAISE(ABORT, 'a document is never deleted'); END;
CREATE TRIGGER document_once BEFORE INSERT ON document
WHEN EXISTS (SELECT 1 FROM document WHERE sequence = NEW.sequence
  OR (name = NEW.name AND version = NEW.version))
BEGIN SELECT RAISE(ABORT, 'a version of a document is never replaced'); END;
CREATE TRIGGER place_stays BEFORE UPDATE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never changed'); END;
CREATE TRIGGER place_remains BEFORE DELETE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never deleted'); END;
CREATE TRIGGER place_once BEFORE INSERT ON place
WHEN EXISTS (SELECT 1 FROM place WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a place is never replaced'); END;
CREATE TRIGGER box_check_stays BEFORE UPDATE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never changed'); END;
CREATE TRIGGER box_check_remains BEFORE DELETE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never deleted'); END;
CREATE TRIGGER box_check_once BEFORE INSERT ON box_check
WHEN EXISTS (SELECT 1 FROM box_check WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never replaced'); END;
CREATE TRIGGER shop_stays BEFORE UPDATE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never changed'); END;
CREATE TRIGGER shop_remains BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never deleted'); END;
CREATE TRIGGER shop_once BEFORE INSERT ON shop
WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never replaced'); END;
CREATE TRIGGER replica_remains BEFORE DELETE ON replica
BEGIN SELECT RAISE(ABORT, 'a replica is never deleted'); END;
COMMIT;
