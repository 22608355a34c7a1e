/** A page's HTML as a document, built by the rules that browsers follow; no script runs, nothing is fetched. */
import { type html, parse, type TreeAdapter, type TreeAdapterTypeMap } from 'parse5';
import {
  type Attribute,
  COMMENT_NODE,
  DOCTYPE_NODE,
  FRAGMENT_NODE,
  LightDocument,
  LightElement,
  LightNode,
  TEXT_NODE,
} from './nodes.ts';

type LightTree = TreeAdapterTypeMap<
  LightNode,
  LightNode,
  LightNode,
  LightDocument,
  LightNode,
  LightElement,
  LightNode,
  LightNode,
  LightElement,
  LightNode
>;

function appendText(parent: LightNode, text: string, next: LightNode | null): void {
  const before = next === null ? parent.lastChild : next.previousSibling;
  if (before?.nodeType === TEXT_NODE) before.nodeValue += text;
  else parent.insert(new LightNode(TEXT_NODE, text), next);
}

function childrenOf(parent: LightNode): LightNode[] {
  const children: LightNode[] = [];
  for (let node = parent.firstChild; node !== null; node = node.nextSibling) children.push(node);
  return children;
}

function adoptAttributes(element: LightElement, attributes: Attribute[]): void {
  for (const attribute of attributes)
    if (element.getAttribute(attribute.name) === null) element.attributes.push(attribute);
}

/** How the parser builds and looks at our nodes; a doctype's name is all that is kept of it. */
const lightTree: TreeAdapter<LightTree> = {
  createDocument: () => new LightDocument(),
  createDocumentFragment: () => new LightNode(FRAGMENT_NODE),
  createElement: (tag, namespace, attributes) => new LightElement(tag, namespace, attributes),
  createCommentNode: (text) => new LightNode(COMMENT_NODE, text),
  createTextNode: (text) => new LightNode(TEXT_NODE, text),
  appendChild: (parent, node) => parent.insert(node, null),
  insertBefore: (parent, node, next) => parent.insert(node, next),
  insertText: (parent, text) => appendText(parent, text, null),
  insertTextBefore: appendText,
  detachNode: (node) => node.detach(),
  adoptAttributes,
  setTemplateContent: (template, content) => {
    template.content = content;
  },
  getTemplateContent: (template) => template.content ?? new LightNode(FRAGMENT_NODE),
  setDocumentType: (document, name) => document.insert(new LightNode(DOCTYPE_NODE, name), null),
  setDocumentMode: (document, mode) => {
    document.mode = mode;
  },
  getDocumentMode: (document) => document.mode as html.DOCUMENT_MODE,
  getFirstChild: (node) => node.firstChild,
  getChildNodes: childrenOf,
  getParentNode: (node) => node.parentNode,
  getAttrList: (element) => element.attributes,
  getTagName: (element) => element.localName,
  getNamespaceURI: (element) => element.namespaceURI as html.NS,
  getTextNodeContent: (node) => node.nodeValue ?? '',
  getCommentNodeContent: (node) => node.nodeValue ?? '',
  getDocumentTypeNodeName: (node) => node.nodeValue ?? '',
  getDocumentTypeNodePublicId: () => '',
  getDocumentTypeNodeSystemId: () => '',
  isTextNode: (node): node is LightNode => node.nodeType === TEXT_NODE,
  isCommentNode: (node): node is LightNode => node.nodeType === COMMENT_NODE,
  isDocumentTypeNode: (node): node is LightNode => node.nodeType === DOCTYPE_NODE,
  isElementNode: (node): node is LightElement => node instanceof LightElement,
  getNodeSourceCodeLocation: () => null,
  setNodeSourceCodeLocation: () => {},
  updateNodeSourceCodeLocation: () => {},
};

/** The document a browser would build of this text before any script runs: what `readPage` needs of it. */
export const parsePage = (text: string): Document =>
  parse<LightTree>(text, { treeAdapter: lightTree }) as unknown as Document;
