// Package site holds what the browser is sent: the page, its styles, its modules
// and its words in each language. The modules are plain ones of the language
// (ECMAScript 2022), so there is nothing to build and nothing to install.
package site

import (
	"embed"
	"io/fs"
)

//go:embed index.html style modules words
var files embed.FS

// Files are index.html, and beside it what it asks for. In index.html the words
// {{token}} and {{language}} stand where the server puts those of a visit.
func Files() fs.FS { return files }
