package rules

import (
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// This file is the rule of what hangs side by side, as curtains do: it is matched along
// the cloth (JoinsOf), and here the names of its pieces are known.

var _ = register(rule{
	pieces: func(c cloth.Cloth) []string { return c.Repeat.SideBySide },
	task:   lay.ToHangSideBySide,
})
