package main

import (
	"go/ast"
	"go/token"
	"slices"
	"strconv"
	"strings"
)

// mutant is one change of one place.
type mutant struct {
	of       string // import path of the package
	file     string // absolute
	line     int
	from, to int    // the bytes of the file that are replaced
	was      string // what stands there
	with     string // what stands there then
	// around are the nodes that the place is in, from the file to the one that is changed.
	around []ast.Node
}

// swaps are the operators that are exchanged: comparisons at their boundary and
// against their opposite, signs, and the two ways to join conditions.
var swaps = map[token.Token][]token.Token{
	token.LSS: {token.LEQ, token.GEQ}, token.LEQ: {token.LSS, token.GTR},
	token.GTR: {token.GEQ, token.LEQ}, token.GEQ: {token.GTR, token.LSS},
	token.EQL: {token.NEQ}, token.NEQ: {token.EQL},
	token.ADD: {token.SUB}, token.SUB: {token.ADD}, token.MUL: {token.QUO}, token.QUO: {token.MUL},
	token.LAND: {token.LOR}, token.LOR: {token.LAND},
	token.ADD_ASSIGN: {token.SUB_ASSIGN}, token.SUB_ASSIGN: {token.ADD_ASSIGN},
	token.MUL_ASSIGN: {token.QUO_ASSIGN}, token.QUO_ASSIGN: {token.MUL_ASSIGN},
	token.INC: {token.DEC}, token.DEC: {token.INC},
}

// mutantsOf lists every change of a file that is thought of. Some do not build: a
// sum of texts has no difference.
func (c *code) mutantsOf(of string, tree *ast.File) []mutant {
	path := c.path(tree)
	v := &visitor{files: c.files, source: c.sources[path], base: mutant{of: of, file: path}}
	ast.Inspect(tree, v.visit)
	return v.found
}

// visitor collects the mutants of one file.
type visitor struct {
	files  *token.FileSet
	source string
	base   mutant
	found  []mutant
}

func (v *visitor) visit(n ast.Node) bool {
	if n == nil {
		v.base.around = v.base.around[:len(v.base.around)-1]
		return true
	}
	if _, ok := n.(*ast.ImportSpec); ok {
		return false
	}
	v.base.around = append(v.base.around, n)
	switch n := n.(type) {
	case *ast.BinaryExpr:
		v.exchange(n.OpPos, n.Op)
	case *ast.AssignStmt:
		v.exchange(n.TokPos, n.Tok)
	case *ast.IncDecStmt:
		v.exchange(n.TokPos, n.Tok)
	case *ast.UnaryExpr:
		if n.Op == token.SUB {
			v.add(n.OpPos, n.OpPos+1, "")
		}
	case *ast.BasicLit:
		if with, ok := otherNumber(n); ok {
			v.add(n.Pos(), n.End(), with)
		}
	case *ast.Ident:
		if n.Name == "true" || n.Name == "false" {
			v.add(n.Pos(), n.End(), strconv.FormatBool(n.Name == "false"))
		}
	case *ast.IfStmt:
		v.add(n.Cond.Pos(), n.Cond.End(), "!("+v.text(n.Cond.Pos(), n.Cond.End())+")")
	}
	return true
}

// exchange an operator.
func (v *visitor) exchange(at token.Pos, op token.Token) {
	for _, other := range swaps[op] {
		v.add(at, at+token.Pos(len(op.String())), other.String())
	}
}

func (v *visitor) add(from, to token.Pos, with string) {
	m := v.base
	m.around = slices.Clone(v.base.around)
	m.line = v.files.Position(from).Line
	m.from, m.to = v.files.Position(from).Offset, v.files.Position(to).Offset
	m.was, m.with = v.text(from, to), with
	v.found = append(v.found, m)
}

func (v *visitor) text(from, to token.Pos) string {
	return v.source[v.files.Position(from).Offset:v.files.Position(to).Offset]
}

// otherNumber is a number near a literal: a whole one and one more, and a tenth
// more of any other.
func otherNumber(n *ast.BasicLit) (string, bool) {
	text := strings.ReplaceAll(n.Value, "_", "")
	switch n.Kind {
	case token.INT:
		if value, err := strconv.ParseInt(text, 0, 62); err == nil {
			return strconv.FormatInt(value+1, 10), true
		}
	case token.FLOAT:
		value, err := strconv.ParseFloat(text, 64)
		if err != nil {
			return "", false
		}
		if value == 0 {
			return "1.0", true
		}
		return "(1.1*" + n.Value + ")", true
	}
	return "", false
}
