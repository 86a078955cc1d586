// SPDX-License-Identifier: MIT
// Portuguese words of songs whose stressed e and o the spelling does not tell. Private to the layer.
// Common words of the language, from memory; P. Barbosa & E. Albano, "Brazilian Portuguese", J. IPA 34
// (2004), for the seven vowels.
#pragma once

#include <string_view>

namespace vowelway::diction {

/// Open ɛ or ɔ under stress.
inline constexpr std::string_view portuguese_open =
    " ela elas dela delas nela nelas aquela aquelas daquela naquela essa essas dessa nessa esta estas desta "
    "nesta"
    " quero quer queres bela belas belo belos certo certa certos perto eterno eterna inverno inferno terra "
    "terras"
    " guerra serra verso versos deserto aberto aberta festa festas floresta mulher mulheres mel fiel papel"
    " hotel anel pele fere espera era eras dez sete neve breve leve alegre tarde resta presta mestre peste "
    "tela vela"
    " velas estrelas janela capela canela rosa rosas hora horas agora embora senhora aurora chora choras "
    "adora"
    " implora glória porta portas morte mortes sorte forte norte corte gosto sol voz nós vós só após arroz"
    " nova novas nossa nossas vossa bola escola viola moda roda mola cola corda acorda olhos fogos ovos novos"
    " jogos povos portos corpos formosa formosas saudosa amorosa ditosa chorosa mimosa mote nobre pobre cobre"
    " morre corre volta volte solta noto note bote loja flora morro toca tocas gota ";

/// Closed e or o, where the endings would make it open.
inline constexpr std::string_view portuguese_closed =
    " estrela cera cereja boca boca moça toda todas boa pessoa coroa lagoa hoje doce doces onde flores "
    "amores dores"
    " cores senhores mesa mesas tristeza beleza pureza natureza certeza nobreza cabelo cabelos ele eles dele "
    "deles"
    " nele aquele aqueles esse esses este estes deste neste desse nesse verde negro negra cedo medo segredo"
    " desejo vejo cabeça ver ter ser você força moço fogo jogo povo novo ovo corpo porto morto olho esposo "
    "formoso"
    " gozo todo todos outro outros ouro sono como lobo bobo topo rosto gosto posto senhor amor flor dor cor "
    "calor"
    " louvor pastor espera ";

} // namespace vowelway::diction
