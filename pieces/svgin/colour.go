package svgin

import (
	"fmt"
	"math"
	"strings"
)

// colours by the names that drawings use most [source.SVG].
var colours = map[string]string{
	"black": "#000000", "white": "#ffffff", "red": "#ff0000", "green": "#008000", "blue": "#0000ff",
	"yellow": "#ffff00", "cyan": "#00ffff", "aqua": "#00ffff", "magenta": "#ff00ff", "fuchsia": "#ff00ff",
	"lime": "#00ff00", "grey": "#808080", "gray": "#808080", "silver": "#c0c0c0", "maroon": "#800000",
	"navy": "#000080", "olive": "#808000", "purple": "#800080", "teal": "#008080", "orange": "#ffa500",
	"brown": "#a52a2a", "pink": "#ffc0cb",
}

// colour as #rrggbb where it can be told, else as it is written; empty for none.
func colour(text string) string {
	text = strings.ToLower(strings.TrimSpace(text))
	switch {
	case text == "none" || text == "transparent":
		return ""
	case text == "currentcolor":
		return "#000000"
	case len(text) == 4 && text[0] == '#':
		return "#" + strings.Repeat(text[1:2], 2) + strings.Repeat(text[2:3], 2) + strings.Repeat(text[3:4], 2)
	case strings.HasPrefix(text, "rgb(") && strings.HasSuffix(text, ")"):
		return ofThree(text)
	case colours[text] != "":
		return colours[text]
	}
	return short(text)
}

// ofThree parts, as numbers up to 255 or as percentages.
func ofThree(text string) string {
	percent := strings.Contains(text, "%")
	parts, err := numbers(strings.ReplaceAll(text[4:len(text)-1], "%", " "))
	if err != nil || len(parts) != 3 {
		return short(text)
	}
	out := "#"
	for _, x := range parts {
		if percent {
			x *= 2.55
		}
		out += fmt.Sprintf("%02x", int(math.Round(min(max(x, 0), 255))))
	}
	return out
}
