package site

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/illustration"
	"ellwand/draft"
	"ellwand/fabric/lay"
)

// texts of the files below a folder, by their paths.
func texts(t *testing.T, folder string) map[string]string {
	t.Helper()
	out := map[string]string{}
	require.NoError(t, fs.WalkDir(Files(), folder, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := fs.ReadFile(Files(), name)
		out[name] = string(text)
		return err
	}))
	return out
}

// words of a language: texts, or one for each plural.
func words(t *testing.T, language string) map[string]any {
	t.Helper()
	text, err := fs.ReadFile(Files(), "words/"+language+".json")
	require.NoError(t, err)
	var out map[string]any
	require.NoError(t, json.Unmarshal(text, &out))
	return out
}

var languages = []string{"en", "de"}

func TestLanguagesHaveTheSameWords(t *testing.T) {
	first := words(t, languages[0])
	for _, language := range languages[1:] {
		other := words(t, language)
		for key, text := range first {
			assert.Contains(t, other, key, "%s has no word for %s", language, key)
			assert.Equal(t, placesOf(text), placesOf(other[key]), "%s in %s leaves another value open", key, language)
		}
		assert.Len(t, other, len(first), "%s has words that %s has not", language, languages[0])
	}
}

// placesOf values in a text, each once.
func placesOf(text any) []string {
	written, _ := json.Marshal(text)
	found := regexp.MustCompile(`\{\w+\}`).FindAllString(string(written), -1)
	slices.Sort(found)
	return slices.Compact(found)
}

// Every word that a module names is there; a name that is put together, such as
// step.${step}, at least begins like one.
func TestModulesFindTheirWords(t *testing.T) {
	known := words(t, "en")
	plain, joined := regexp.MustCompile(`\bword\(\s*'([^']+)'`), regexp.MustCompile("\\bword\\(\\s*`([^`$]*)\\$\\{")
	used := 0
	for name, text := range texts(t, "modules") {
		for _, found := range plain.FindAllStringSubmatch(text, -1) {
			assert.Contains(t, known, found[1], "%s", name)
			used++
		}
		for _, found := range joined.FindAllStringSubmatch(text, -1) {
			assert.True(t, begins(known, found[1]), "%s: no word begins with %q", name, found[1])
		}
	}
	assert.Greater(t, used, 100)
}

func begins(known map[string]any, with string) bool {
	for key := range known {
		if with != "" && strings.HasPrefix(key, with) || with == "" {
			return true
		}
	}
	return false
}

// What people choose from, and what they are asked for, has a word in every language.
func TestTermsOfTheTradeHaveWords(t *testing.T) {
	var keys []string
	for _, m := range draft.Measurements() {
		key := strings.ReplaceAll(string(m), " ", "_")
		keys = append(keys, "label."+key, "how."+key)
	}
	for _, garment := range illustration.Garments() {
		keys = append(keys, "garment."+garment)
	}
	for _, kind := range lay.Kinds() {
		keys = append(keys, "term."+kind.String())
	}
	for _, language := range languages {
		known := words(t, language)
		for _, key := range keys {
			assert.Contains(t, known, key, language)
		}
	}
}

// Everything that a page loads comes from the program, and no element carries a style or
// a script of its own, which the policy of the page would refuse.
func TestThePageKeepsItsPolicy(t *testing.T) {
	all := texts(t, ".")
	outside := regexp.MustCompile(`(?:src|href|url|import|fetch)\W{0,3}['"(]?(?:https?:)?//`)
	for name, text := range all {
		assert.NotRegexp(t, outside, text, name)
		assert.NotContains(t, text, "innerHTML", name)
		assert.NotRegexp(t, `setAttribute\('style'|eval\(|new Function`, text, name)
	}
	index := all["index.html"]
	assert.NotRegexp(t, `<style|style="|<script>|\son\w+="`, index)
	for _, found := range regexp.MustCompile(`(?:href|src)="/site/([^"]+)"`).FindAllStringSubmatch(index, -1) {
		assert.Contains(t, all, found[1])
	}
	imported := regexp.MustCompile(`from '(\.[^']+)'`)
	for name, text := range all {
		for _, found := range imported.FindAllStringSubmatch(text, -1) {
			assert.Contains(t, all, path.Join(path.Dir(name), found[1]), name)
		}
	}
}

// lightest is what a page may weigh, bytes as they are sent.
const lightest = 500_000

func TestThePageIsLight(t *testing.T) {
	sum := 0
	for _, text := range texts(t, ".") {
		var out bytes.Buffer
		zip := gzip.NewWriter(&out)
		_, err := zip.Write([]byte(text))
		require.NoError(t, err)
		require.NoError(t, zip.Close())
		sum += out.Len()
	}
	assert.Less(t, sum, lightest)
	t.Logf("%d bytes compressed", sum)
}

// Files stay short, so that each has one subject.
func TestFilesStayShort(t *testing.T) {
	for name, text := range texts(t, ".") {
		if path.Dir(name) == "words" {
			continue
		}
		lines := strings.Split(text, "\n")
		assert.LessOrEqual(t, len(lines), 300, name)
		for i, line := range lines {
			if path.Ext(name) != ".svg" {
				assert.LessOrEqual(t, len([]rune(line)), 120, "%s:%d", name, i+1)
			}
		}
	}
}
