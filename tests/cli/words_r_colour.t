# English is sung without r after vowels unless it is asked for.
$ vowelway words "the fair heart" --language en
syllables  sung
the        ə
fair       ɛə̯
heart      ɑː
$ vowelway words "the fair heart" --language en --r-colour
syllables  sung
the        ə
fair       ɛə̯˞
heart      ɑ˞ː
