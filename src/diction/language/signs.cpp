// SPDX-License-Identifier: MIT
#include "diction/language/signs.hpp"

#include "diction/words/letters.hpp"

#include <map>
#include <string>

namespace vowelway::diction {

namespace {

// The commonest function words of each language and a few that songs are full of. Common knowledge of the
// languages, no source.
struct FunctionWords {
    Language language;
    std::string_view words;
};

constexpr FunctionWords lists[] = {
    {Language::italian,
     "il lo la i gli le un uno una di del dello della dei degli delle dell' a al allo alla ai agli alle da "
     "dal dalla dai "
     "in nel nella nei nelle con col sul sulla per tra fra e ed o ma che chi cui non né se più come quando "
     "dove perché mio "
     "mia miei mie tuo tua tuoi tue suo sua suoi nostro nostra io tu lui lei noi voi mi ti si ci vi ne "
     "questo questa quel "
     "quella è sei sono ho hai ha era sia fu son già ancor ancora mai sempre così anche ogni tutto tutti "
     "tutta amor amore cor "
     "core cuore ben bene cara caro bella bel vita ciel cielo morte notte sol sole dolce pietà ah oh deh"},
    {Language::latin,
     "et in est non qui quae quod cum ad de ex pro per ut sed nos vos tu te me mihi tibi nobis vobis eius "
     "ejus sunt erat "
     "sicut nunc semper omnes omnia dominus domine deus dei deo deum domini jesu jesus iesu christe christus "
     "kyrie eleison "
     "gloria sanctus agnus benedictus benedicta amen alleluia ave maria mater sancta salve regina miserere "
     "nostra nostri "
     "nostrae noster tuum tua tui tuam meum mea meam suum terra coeli caeli caelum pacem pax lux requiem "
     "aeternam spiritus "
     "sancti sancto filius patris pater quoniam propter super gratias hosanna stabat dolorosa ora fructus"},
    {Language::german, "der die das den dem des ein eine einen einem einer eines und oder aber nicht ist "
                       "sind war bin bist ich du er sie es wir "
                       "ihr mich mir dich dir ihm ihn ihnen uns euch mein meine meinen meinem meiner dein "
                       "deine deinen deinem deiner sein seine "
                       "seinen seinem in im an am auf aus bei mit nach von vom zu zum zur für durch über "
                       "unter vor um so wie wenn als da dass daß "
                       "was wer wo noch nur schon auch nun doch kein keine hat habe will wird kann mag soll "
                       "o ach herz liebe nacht"},
    {Language::french, "le la les un une des du de d' l' et ou où mais que qu' qui quand si ne n' pas plus "
                       "je j' tu il elle on nous vous ils "
                       "elles me m' te t' se s' ce c' cet cette ces mon ma mes ton ta tes son sa ses notre "
                       "votre leur au aux en dans sur sous "
                       "par pour avec sans est es suis sont était à y comme tout toute tous bien ah coeur "
                       "cœur amour nuit ciel"},
    {Language::english, "the a an and or but of to in on at by for from with is are was were be been am i "
                        "you he she it we they me him her us "
                        "them my your thy thine his its our their thou thee ye this that these those not no "
                        "so as if when where who what which "
                        "shall will would can could may have has had do doth o oh all one there then than "
                        "love heart night o'er upon"},
    {Language::spanish, "el la los las un una unos de del a al en con por para y e o u pero que quien cuando "
                        "si no ni más como mi mis tu tus su "
                        "sus me te se nos lo le les yo tú él ella es soy eres está son era ha he hay ya muy "
                        "este esta ese esa aquel amor corazón "
                        "noche sin sobre donde porque ay"},
    {Language::portuguese, "o a os as um uma de do da dos das em no na nos nas com por para e ou mas que "
                           "quem quando se não mais como meu minha meus "
                           "teu tua seu sua me te eu tu ele ela é são está foi ao à aos pelo pela já muito "
                           "este esta esse essa amor coração noite sem "
                           "sobre onde porque ai tem vem"},
    {Language::catalan, "el la els les un una de del dels i o però que qui quan si no més com meu meva amb "
                        "per en al és són jo tu ell ella nit amor cor"},
    {Language::romanian,
     "și si de la în pe cu un o nu că ca mai este sunt eu tu el ea din pentru dor meu mea tău"},
    {Language::dutch, "de het een en of maar van in op aan met voor bij uit naar te ik jij je hij zij ze wij "
                      "het mijn zijn haar is was ben niet "
                      "geen dat die dit wie wat als dan nog ook zo er om"},
    {Language::swedish,
     "och att det som en ett den de är var jag du han hon vi ni mig dig sig min mitt mina din ditt i på av "
     "med för från till om "
     "men inte ej så när där här nu än icke skall vill har hade sin sitt under över vid ack"},
    {Language::danish, "og at det som en et den de er var jeg du han hun vi i mig dig sig min mit mine din i "
                       "på af med for fra til om men ikke ej så når der her nu skal vil har "
                       "være havde efter ind op hvor hvad ham hende os mod ud kun "
                       "vandet fjeld nat tusind noget meget aldrig"},
    {Language::norwegian, "og at det som en et ei den de er var jeg du han hun vi meg deg seg min mitt mine "
                          "i på av med for fra til om men ikke så når der her nå skal vil har "
                          "være hadde etter inn opp hvor hva ham henne oss mot ut bare "
                          "vannet fjell fjellet natt sola tusen noe mye aldri"},
    {Language::icelandic, "og að það sem er var ég þú hann hún við mig þig sig í á af með fyrir frá til um "
                          "en ekki svo þar hér nú"},
    {Language::polish, "i w z na do się nie że to jak co po o ale za od tak już ja ty on ona my mi mnie cię "
                       "ci mój moja mego twój ten ta tam gdy "
                       "gdzie jest był była nad pod przez bez dla czy kto ach oj jej jego"},
    {Language::czech, "a v na se je že to jak co po o ale za od tak už já ty on ona mi mně tě můj moje ten "
                      "ta tam když kde jsem jsi jest byl nad pod bez pro kdo ach"},
    {Language::slovak, "a v na sa je že to ako čo po o ale za od tak už ja ty on ona mi mňa ťa môj moja ten "
                       "tá tam keď kde som si byl nad pod bez pre kto"},
    {Language::croatian, "i u na se je da to kao što po o ali za od tako ja ti on ona mi me te moj moja taj "
                         "ta kad gdje sam si nad pod bez"},
    {Language::slovenian, "in v na se je da to kot kaj po o ali za od tako jaz ti on ona mi me te moj moja "
                          "ta ko kje sem si nad pod brez"},
    {Language::hungarian,
     "a az és hogy nem is egy ez van volt én te ő mi ki de ha csak meg el mint már még sem nincs szép"},
    {Language::finnish, "ja on ei se että hän oi sa maa en minä sinä mun sun minun sinun kun niin mutta ne "
                        "oli kuin jo vain nyt mi ken"},
    {Language::estonian, "ja on ei see et ta ma sa mu su minu sinu kui nii aga nad oli ka kes mis siis"},
    {Language::latvian, "un ir ne ka es tu viņš viņa man tev kas kā no ar uz par"},
    {Language::lithuanian, "ir yra ne kad aš tu jis ji man tau kas kaip iš su ant per"},
    {Language::turkish, "ve bir bu da de ne ben sen o için ile çok gibi var yok mi"},
    {Language::welsh,
     "y yr a ac yn ar o i mae yw nid fy dy ei ni chi mi ti fe hi am ond dros gan "
     "gwlad wlad hen duw cariad mor dim ddim pob byd wedi hyd heb dan bydd fel oedd dyma i'r a'r o'r"},
    {Language::irish, "an na agus i ar le do go is tá mé tú sé sí mo"},
    {Language::gaelic, "an na agus air le do gu is tha mi thu e i mo"},
    {Language::basque, "eta da ez bat du ni zu hura nire zure ere dut"},
    {Language::hebrew,
     "adonai adonay adonoi elohim eloheinu eloheynu elohenu baruch barukh ata atah attah shalom "
     "yisrael hashem kadosh ki kol lecha shema sh'ma melech haolam ha'olam shabbat avinu malkeinu "
     "hallelu halleluyah tov yom yerushalayim ani l'olam asher aleichem bashamayim yevarechecha "
     "ha'aretz haaretz va'ed vaed echad"},
    {Language::church_slavonic, "gospodi gospod gospoda pomilui pomiluy pomiluj slava ottsu otsu otcu synu "
                                "sviatomu svyatomu svjatomu sviatyi svyatyi "
                                "svyaty svyatyy dukhu duhu nyne prisno vo veki vekov amin bozhe boze "
                                "bogoroditse bogoroditsa devo raduisya raduysya "
                                "radujsja blagoslovi blagoslovim dushe moya tebe poem khvalim milost mira "
                                "izhe kheruvimy alliluiya blazhen muzh "
                                "yako iako jako tvoe tvoya nash i"},
    {Language::hawaiian, "ka ke i o ma me nā he ua e kou ku'u aloha nei mai oe au a no"},
};

std::map<std::string_view, std::vector<Language>> const& function_words() {
    static auto const all = [] {
        std::map<std::string_view, std::vector<Language>> out;
        for (auto const& [language, words] : lists) {
            auto rest = words;
            while (!rest.empty()) {
                auto const end = rest.find(' ');
                auto& languages = out[rest.substr(0, end)];
                if (languages.empty() || languages.back() != language) languages.push_back(language);
                if (end == std::string_view::npos) break;
                rest.remove_prefix(end + 1);
            }
        }
        return out;
    }();
    return all;
}

// Letters that few languages write (Unicode CLDR exemplar characters, from memory).
struct Telling {
    char32_t base, mark;
    std::vector<Language> languages;
};

std::vector<Telling> const& telling_letters() {
    using enum Language;
    static std::vector<Telling> const all = {
        {U'ß', 0, {german}},
        {U'a', mark::diaeresis, {german, swedish, finnish, estonian}},
        {U'o', mark::diaeresis, {german, swedish, finnish, hungarian, turkish, icelandic}},
        {U'u', mark::diaeresis, {german, hungarian, estonian, turkish}},
        {U'n', mark::tilde, {spanish}},
        {U'¿', 0, {spanish}},
        {U'a', mark::tilde, {portuguese}},
        {U'o', mark::tilde, {portuguese, estonian}},
        {U'œ', 0, {french}},
        {U'e', mark::circumflex, {french, portuguese}},
        {U'c', mark::cedilla, {french, portuguese, catalan, turkish}},
        {U'a', mark::ring, {swedish, danish, norwegian}},
        {U'ø', 0, {danish, norwegian}},
        {U'þ', 0, {icelandic}},
        {U'ð', 0, {icelandic}},
        {U'ł', 0, {polish}},
        {U'a', 0x328, {polish, lithuanian}},
        {U'e', 0x328, {polish, lithuanian}},
        {U'z', 0x307, {polish}},
        {U's', mark::acute, {polish}},
        {U'e', mark::caron, {czech}},
        {U'r', mark::caron, {czech}},
        {U'u', mark::ring, {czech}},
        {U'o', 0x30B, {hungarian}},
        {U'u', 0x30B, {hungarian}},
        {U'ğ', 0, {turkish}},
        {U'ı', 0, {turkish}},
        {U'ț', 0, {romanian}},
        {U'ș', 0, {romanian}},
    };
    return all;
}

bool ends(std::string_view word, std::initializer_list<std::string_view> endings) {
    for (auto const ending : endings)
        if (word.size() > ending.size() + 1 && word.ends_with(ending)) return true;
    return false;
}

} // namespace

std::vector<std::pair<Language, double>> signs(std::string_view word) {
    using enum Language;
    std::map<Language, double> out;
    if (auto const found = function_words().find(word); found != function_words().end())
        for (auto const language : found->second)
            out[language] += 1 / static_cast<double>(found->second.size());
    // "l'alma", "d'amour": the article tells, the rest may too.
    if (auto const cut = word.find('\''); cut != std::string_view::npos && cut + 1 < word.size())
        if (auto const found = function_words().find(word.substr(0, cut + 1));
            found != function_words().end())
            for (auto const language : found->second)
                out[language] += 0.5 / static_cast<double>(found->second.size());
    bool greek_seen = false, cyrillic_seen = false;
    for (auto const& letter : letters(word)) {
        if (letter.base >= 0x370 && letter.base < 0x400) greek_seen = true;
        if (letter.base >= 0x400 && letter.base < 0x530) cyrillic_seen = true;
        if (letter.base == U'і' || letter.base == U'ї' || letter.base == U'є') out[ukrainian] += 1;
        for (auto const& telling : telling_letters())
            if (telling.base == letter.base && telling.mark == letter.mark)
                for (auto const language : telling.languages)
                    out[language] += 1 / static_cast<double>(telling.languages.size());
    }
    if (greek_seen) out[greek] += 1;
    if (cyrillic_seen) out[russian] += 0.9;
    if (word.ends_with('a') &&
        (word.find("ä") != word.npos || word.find("ö") != word.npos || word.find("å") != word.npos))
        out[swedish] += 0.5;
    if (ends(word, {"orum", "arum", "ibus", "mus", "tis", "um", "us", "ae"})) out[latin] += 0.4;
    if (ends(word, {"zione", "tà", "mento", "etto", "ello", "ella", "ando", "endo", "ché"}))
        out[italian] += 0.4;
    if (ends(word, {"ung", "keit", "heit", "chen", "lein", "sch", "cht", "st"})) out[german] += 0.3;
    if (ends(word, {"eux", "aux", "eur", "oir", "ais", "ait", "aient", "euse", "ez"})) out[french] += 0.4;
    if (ends(word, {"nen", "ssa", "ssä", "llä", "stä", "ksi", "tta", "ttä"}) ||
        word.find("ää") != word.npos || word.find("yö") != word.npos)
        out[finnish] += 0.4;
    if (ends(word, {"ing", "ght", "ness", "th", "ck", "sh"})) out[english] += 0.3;
    return {out.begin(), out.end()};
}

} // namespace vowelway::diction
