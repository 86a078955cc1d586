// SPDX-License-Identifier: MIT
// Words that commonly form the second part of German compounds, for finding the joint. Private to the layer.
// Common words of the language, from memory, no source.
#pragma once

#include <string_view>

namespace vowelway::diction {

// ä ö ü ß as A O U S. Only words that seldom occur inside another stem.
inline constexpr std::string_view german_elements =
    " abend abkommen ablauf abschnitt ader adler affe akkord alter altar amt anfang anlage anlass anstalt antrag antwort anzug apfel apotheke arbeit"
    " artig artikel aufgabe auflage aufenthalt auge ausgabe ausgang bach bahn balken ball band bank bau bauer baum becher becken bedarf befreiung"
    " begleiter behandlung behOrde beitrag beleuchtung beratung bereich bericht besteck bestand besuch betrieb betrUger bewegung bezeichnung beziehung"
    " bibliothek biene bier bild birne blatt blick blitz block blume blut boden bogen boot braten brauch braut breite brett brief brille brot brUcke"
    " bruder brunnen brust buch bUchse bude bUhne bund burg busch butter chor creme dach dame damm dampf decke degen deutsch dichter dichtung dieb dienst"
    " dorf draht druck duft ebene ecke eimer einheit einsatz eisen eltern engel entzUndung erde ergebnis erfolg erklArung erlebnis ersatz erstattung"
    " faden fahne fahrer fahrt fall falle familie fang farbe fass feder fehler feier feind feld fels fenster ferien fest fett feuer fieber figur film"
    " finger firma fisch flasche fleck fleisch fliege flOte flucht flUgel flug fluss flut folge form fOrmig forscher forschung frage frau frei freiheit"
    " freude freund frieden frist frosch frucht frUh fUhrer fUhrung furcht fUrst gabel gang garten gasse gast gebAude gebet gebiet gebirge geburt"
    " gebrauch gedanke gedicht gefAhrte gefAngnis gefAS gefahr gefUhl gegend geheimnis gehilfe geist gelAnde gelAnder geld gelenk gemeinde gemeinschaft"
    " gerAt gericht geruch gesang geschAft geschenk geschichte geschirr geschoss geschwindigkeit gesellschaft gesetz gesicht gesprAch gestalt gesuch"
    " getreide gewAchs gewebe gewehr gewicht gewinn gewitter gewOlbe gewUrz gift gipfel gitter glanz glas glaube glocke glUck gold gott grab gras graf"
    " grenze griff grube grund gruppe haar hafen hahn haken hals haltig halter haltung hand handel handlung hase haube haufen haupt haus haut heer heft"
    " heim held hemd hengst herr hersteller herrschaft herz hilfe himmel hirsch hitze hochzeit hof hOhe hOhle holz honig horn hose hotel hUgel huhn"
    " hUlle hund hut hUtte insel instrument jagd jAger jahr junge kabel kAfer kAfig kaiser kalb kalender kamm kammer kampf kanne kante kappe karte kasse"
    " kasten katze kaufmann kehle keller kern kerze kette kind kirche kirsche kissen klang klasse kleid kloster klotz knabe knecht knochen knopf koch"
    " koffer kohl kohle kOnig kopf korb korn kOrper kosten kraft kranz krankheit kraut kreis kreuz krieg krone kuchen kUche kugel kuh kunde kunst kurs"
    " laden lager lampe land lauf laut leben leder lehre lehrer leib leid leiter leitung leuchter leute licht liebe lied linie lippe liste loch lOffel"
    " lohn lOwe luft macher macht mAdchen maler mangel mann mantel mantelung markt marsch maschine maske masse mast mauer maus meer mehl meister menge"
    " mensch messer metall meter milch minute mittel monat mond morgen motor mUcke mUhle mund mUnze musik mutter mUtze nacht nadel nagel name narr nase"
    " nebel nest netz note nummer nuss ofen ordnung orgel papier partei pfad pfanne pfeife pfeil pferd pflanze pflege pforte platte platz prAger preis"
    " priester probe produkt programm punkt puppe quelle rahmen rand rat raum rauch rebe rechnung recht rede regel regen reich reife reihe reise reiter"
    " richter richtung riegel riese rind ring ritter rock rohr rolle rose rost ruf ruhe runde saal sache sAge saft saite salat salz same samt sand sAnger"
    " satz sau schacht schaft schaden schaf schale schatten schatz schau schaum schein schelle schenke schere scherz schicht schild schimmel schinken schirm schlacht"
    " schlaf schlag schlange schlauch schleife schloss schlUssel schmerz schmied schmuck schnabel schnecke schnee schneider schnitt schnur schOn schrank schraube"
    " schrecken schrei schrift schritt schuh schule schUler schulter schuss schUssel schutz schwan schwanz schwein schwert schwester segel seide seife"
    " seil seite sieb siedlung silbe silber sinn sitte sitz sohle sohn soldat sommer sonne sorge sorte spalte spange speck speise spiegel spiel spitze sprache"
    " sprecher sprung spur stab stadt stahl stall stamm stand stange statt staub stein stelle stern steuer stich stiel stier stiftung stille stimme stimmung"
    " stirn stock stoff stolz strafe strahl strand straSe strauch strauS strecke streich streit strich strick stroh strom strumpf stube stUck student stufe"
    " stuhl stunde sturm stUtze suche sucht sumpf suppe system tafel tag takt tal tanne tante tanz tasche tasse tat taube teig teil teller tempel teufel text tiefe"
    " tier tisch tochter tod ton topf tor tote tracht trAger traube traum treppe treue trieb trommel tropfen truhe tuch tugend turm Ubung uhr ufer unterricht"
    " urlaub ursache vater verband verbrechen verein verfahren vergnUgen verkAufer verkehr verlag verlust vermittlung verordnung versammlung versicherung"
    " versuch vertrag verwaltung vieh vogel volk vorstellung waage wache wachs waffe wagen wahl wald wall walze wand wandel wandlung wange wanne ware wArter wasser"
    " weber wechsel weg weide wein weise weib weise weite welle welt wende werk wert wesen wetter wiege wiese wild wille wind winkel winter wirt wirtschaft woche wohnung"
    " wolf wolke wolle wort wunde wunder wunsch wurf wurm wurst wurzel wUste zahl zahn zange zauber zaun zeichen zeichnung zeiger zeile zeit zelle zelt zettel zeug zeuge"
    " ziege ziel zimmer zinn zins zoll zone zorn zucht zucker zug zunge zweck zweig"
    " los haft reich wert wUrdig fach mal voll arm stark schwach gleich weiS schwarz grUn blau braun grau gelb hell dunkel kalt warm heiS"
    " legen setzen stellen stehen kommen halten ziehen fUhren tragen bringen schlagen laufen fahren sprechen schreiben machen lassen schlieSen werfen brechen springen"
    " fliegen schneiden sehen gehen hOren nehmen wegen zwanzig dreiSig vierzig fUnfzig hundert tausend minUtig jAhrig tAgig eckig kOpfig ";

} // namespace vowelway::diction
