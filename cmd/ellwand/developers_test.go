package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The map of the rooms in DEVELOPERS.md names every package once, and no
// package imports one that its row does not allow.
func TestMapOfTheRoomsIsTrue(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	require.NoError(t, err)
	rooms := roomsOf(t, string(text))
	imports := importsOfAll(t)
	for room := range rooms {
		assert.Contains(t, imports, room, "DEVELOPERS.md has a room that is no package")
	}
	for room, imported := range imports {
		allowed, known := rooms[room]
		if !assert.True(t, known, "DEVELOPERS.md does not have the room %s", room) {
			continue
		}
		for _, name := range imported {
			assert.True(t, allowed(name), "%s imports %s, which DEVELOPERS.md does not allow", room, name)
		}
	}
}

var quoted = regexp.MustCompile("`([^`]+)`")

// roomsOf reads the table: of each room what it may import.
func roomsOf(t *testing.T, text string) map[string]func(string) bool {
	t.Helper()
	out := map[string]func(string) bool{}
	_, table, found := strings.Cut(text, "| may import |\n|---|---|---|---|\n")
	require.True(t, found)
	table, _, _ = strings.Cut(table, "\n\n")
	for _, row := range strings.Split(table, "\n") {
		cells := strings.Split(row, " | ")
		require.Len(t, cells, 4, row)
		allowed := allowance(cells[3])
		for _, room := range quoted.FindAllStringSubmatch(cells[0], -1) {
			assert.NotContains(t, out, room[1], "stands twice")
			out[room[1]] = allowed
		}
	}
	return out
}

// What each row says that its rooms begin with is declared in one of them.
func TestMapOfTheRoomsNamesWhatThereIs(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	require.NoError(t, err)
	_, table, _ := strings.Cut(string(text), "| may import |\n|---|---|---|---|\n")
	table, _, _ = strings.Cut(table, "\n\n")
	for _, row := range strings.Split(table, "\n") {
		cells := strings.Split(row, " | ")
		require.Len(t, cells, 4, row)
		code := ""
		for _, room := range quoted.FindAllStringSubmatch(cells[0], -1) {
			files, err := filepath.Glob("../../" + room[1] + "/*.go")
			require.NoError(t, err)
			for _, file := range files {
				source, err := os.ReadFile(file)
				require.NoError(t, err)
				code += string(source)
			}
		}
		for _, name := range quoted.FindAllStringSubmatch(cells[2], -1) {
			last := name[1][strings.LastIndex(name[1], ".")+1:]
			declared := regexp.MustCompile(`(?m)^(func (\([^)]*\) )?|type |\t)` + last + `\b`)
			assert.Regexp(t, declared, code, "%s begins with %s", cells[0], name[1])
		}
	}
}

// allowance is what a cell of the last column says.
func allowance(cell string) func(string) bool {
	var names []string
	for _, name := range quoted.FindAllStringSubmatch(cell, -1) {
		names = append(names, name[1])
	}
	all := strings.HasPrefix(cell, "any but")
	return func(imported string) bool {
		return all != slices.ContainsFunc(names, func(name string) bool {
			tree, isTree := strings.CutSuffix(name, "/...")
			return imported == name || isTree && (imported == tree || strings.HasPrefix(imported, tree+"/"))
		})
	}
}

// importsOfAll gives of every package the packages of ours that it imports,
// tests apart.
func importsOfAll(t *testing.T) map[string][]string {
	t.Helper()
	list := exec.Command("go", "list", "-json=ImportPath,Imports", "./...")
	list.Dir = "../.."
	text, err := list.Output()
	require.NoError(t, err)
	out := map[string][]string{}
	for decoder := json.NewDecoder(strings.NewReader(string(text))); decoder.More(); {
		var found struct {
			ImportPath string
			Imports    []string
		}
		require.NoError(t, decoder.Decode(&found))
		var ours []string
		for _, imported := range found.Imports {
			if name, is := strings.CutPrefix(imported, "ellwand/"); is {
				ours = append(ours, name)
			}
		}
		out[strings.TrimPrefix(found.ImportPath, "ellwand/")] = ours
	}
	return out
}
